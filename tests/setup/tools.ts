/** Programs of the system that read back what we write. Under CI none may be missing; elsewhere their tests are left out. */
import { spawnSync } from "node:child_process";

/** Whether a test that needs the program is to be skipped. */
export function lacks(program: string): boolean {
	return process.env.CI === undefined && spawnSync("which", [program]).status !== 0;
}

/** What a program says on both of its outputs, and its status. */
export function runTool(
	program: string,
	args: readonly string[],
	cwd?: string,
): { status: number | null; said: string } {
	const { status, stdout, stderr, error } = spawnSync(program, args, {
		encoding: "utf8",
		maxBuffer: 64 * 1024 * 1024,
		...(cwd === undefined ? {} : { cwd }),
	});
	if (error !== undefined) throw error;
	return { status, said: stdout + stderr };
}
