"""Reads mails from files with Python's email package (RFC 5322, MIME) and prints what it found as JSON."""
import base64
import email
import email.policy
import json
import sys


def read(path):
    with open(path, "rb") as file:
        mail = email.message_from_binary_file(file, policy=email.policy.SMTP)
    body = mail.get_body(("plain",))
    return {
        "from": str(mail["from"]),
        "to": str(mail["to"]),
        "subject": str(mail["subject"]),
        "messageId": str(mail["message-id"]).strip(),
        "headers": [name for name in mail.keys()],
        "text": body.get_content() if body else "",
        "attachments": [
            {
                "name": part.get_filename(),
                "type": part.get_content_type(),
                "base64": base64.b64encode(part.get_payload(decode=True)).decode(),
            }
            for part in mail.iter_attachments()
        ],
        "defects": [repr(defect) for part in mail.walk() for defect in part.defects],
    }


print(json.dumps([read(path) for path in sys.argv[1:]]))
