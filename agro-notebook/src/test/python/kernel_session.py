"""A kernel under jupyter_client, for the scripts beside this one."""

import contextlib
import time

from jupyter_client.manager import KernelManager

PATIENCE = 120


class Cell:
    """What came of one cell."""

    def __init__(self, reply, messages, seconds):
        self.reply = reply
        self.messages = messages
        self.seconds = seconds

    @property
    def status(self):
        return self.reply["content"]["status"]

    @property
    def error(self):
        return self.reply["content"].get("ename", "")

    def text(self, stream):
        return "".join(
            m["content"]["text"]
            for m in self.messages
            if m["msg_type"] == "stream" and m["content"]["name"] == stream
        )

    def bundles(self):
        return [
            m["content"]["data"]
            for m in self.messages
            if m["msg_type"] in ("execute_result", "display_data")
        ]


def finish(client, request, started, patience=PATIENCE):
    """Waits for the reply to a request and for the kernel to be idle again."""
    messages = []
    end = started + patience
    while True:
        message = client.get_iopub_msg(timeout=max(0.01, end - time.perf_counter()))
        if message["parent_header"].get("msg_id") != request:
            continue
        messages.append(message)
        if message["msg_type"] == "status" and message["content"]["execution_state"] == "idle":
            break
    while True:
        reply = client.get_shell_msg(timeout=max(0.01, end - time.perf_counter()))
        if reply["parent_header"].get("msg_id") == request:
            return Cell(reply, messages, time.perf_counter() - started)


def run(client, code, **options):
    """Evaluates one cell."""
    started = time.perf_counter()
    request = client.execute(code, **options)
    return finish(client, request, started)


@contextlib.contextmanager
def kernel(name, **options):
    """A kernel that has answered once, and that ends with the block."""
    manager = KernelManager(kernel_name=name)
    manager.start_kernel(**options)
    client = manager.client()
    client.start_channels()
    try:
        client.wait_for_ready(timeout=PATIENCE)
        yield manager, client
    finally:
        client.stop_channels()
        manager.shutdown_kernel(now=True)
