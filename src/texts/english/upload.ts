/** Files on their way. */
export const upload = {
	"upload.left": "Files on their way: {count}. You can go on with the page meanwhile.",
	"upload.done": "arrived",
	"upload.all-done": "All files have arrived. They are taken with this form.",
	"upload.away": "No network. It goes on by itself where it was.",
	"upload.held": "Your act is done as soon as the files have arrived. Keep this page open.",
	"upload.lost": "A file that was sent before",
	"upload.failed": "The file could not be sent. Choose it again; it goes on where it was.",
	"upload.give-up": "Do not send {file}",
} as const;
