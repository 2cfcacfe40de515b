"""How a kernel behaves under jupyter_client: interrupts, restart, end, and long output.

usage: kernel_behaviour.py KERNEL [SECONDS]

Each check prints one line with what was measured; replies to an interrupt, a restart and the end must
come within SECONDS (default 1). The exit status is 1 when a check failed.
"""

import os
import queue
import signal
import sys
import time

from kernel_session import finish, kernel, run

# A shell starts what runs in its background with this signal ignored, and a JVM leaves it so.
signal.signal(signal.SIGINT, signal.default_int_handler)

NAME = sys.argv[1]
LIMIT = float(sys.argv[2]) if len(sys.argv) > 2 else 1.0
ENDLESS = {
    "a loop": "while (true) {}",
    "a loop of a method": "void spin() { while (true) { spun++; } }\nlong spun = 0;\nspin();",
    "a sleep": "Thread.sleep(600_000);",
    "a wait of a lock": "Object gate = new Object(); synchronized (gate) { gate.wait(); }",
    "endless output": 'while (true) { System.out.println("x"); }',
    "a loop of the library": "java.util.stream.LongStream.iterate(0, i -> i + 1).filter(i -> i < 0)"
    ".findFirst();",
}
failed = []


def say(name, well, measured):
    print(f"{'ok' if well else 'FAILED'}: {name}: {measured}", flush=True)
    if not well:
        failed.append(name)


def interrupted(manager, client, code, stop):
    """Starts a cell, stops it, and says how long the reply took and whether the next cell works."""
    request = client.execute(code)
    while True:
        message = client.get_iopub_msg(timeout=30)
        if message["msg_type"] == "execute_input":
            break
    time.sleep(0.7)
    started = time.perf_counter()
    stop()
    cell = finish(client, request, started, patience=30)
    after = run(client, "40 + 2")
    right = after.status == "ok" and after.bundles()[0]["text/plain"] == "42"
    return cell, right


def check_interrupts():
    with kernel(NAME) as (manager, client):
        run(client, "1 + 1")
        for what, code in ENDLESS.items():
            cell, right = interrupted(manager, client, code, manager.interrupt_kernel)
            say(
                f"interrupt of {what}",
                cell.status == "error" and right and cell.seconds <= LIMIT,
                f"{cell.error} after {cell.seconds:.2f} s, next cell {'works' if right else 'fails'}",
            )


def check_signal():
    with kernel(NAME) as (manager, client):
        run(client, "1 + 1")
        process = manager.provisioner.process.pid
        cell, right = interrupted(
            manager, client, ENDLESS["a loop"], lambda: os.kill(process, signal.SIGINT)
        )
        say(
            "interrupt by a signal",
            cell.status == "error" and right and cell.seconds <= LIMIT,
            f"{cell.error} after {cell.seconds:.2f} s, next cell {'works' if right else 'fails'}",
        )
        os.kill(process, signal.SIGINT)
        # The signal may take a moment; what comes after it is not to be interrupted by it.
        time.sleep(1)
        idle = run(client, "40 + 2")
        say("a signal to an idle kernel", idle.status == "ok", "alive")


def check_restart_and_end():
    with kernel(NAME) as (manager, client):
        run(client, "int kept = 1;")
        before = manager.provisioner.process.pid
        ended = time.perf_counter()
        manager.shutdown_kernel(now=False, restart=True)
        seconds = time.perf_counter() - ended
        say("end for a restart", seconds <= LIMIT, f"{seconds:.2f} s")
        manager.start_kernel()
        client.stop_channels()
        client = manager.client()
        client.start_channels()
        client.wait_for_ready(timeout=60)
        forgotten = run(client, "kept")
        say(
            "restart",
            forgotten.status == "error" and manager.provisioner.process.pid != before,
            "a new process that knows nothing of the old one",
        )
        busy = client.execute("while (true) {}")
        while True:
            message = client.get_iopub_msg(timeout=30)
            if message["parent_header"].get("msg_id") == busy and message["msg_type"] == "execute_input":
                break
        process = manager.provisioner.process
        ended = time.perf_counter()
        manager.shutdown_kernel(now=False)
        seconds = time.perf_counter() - ended
        say(
            "end of a busy kernel",
            seconds <= LIMIT and process.poll() is not None,
            f"{seconds:.2f} s",
        )
        client.stop_channels()


def check_lines():
    with kernel(NAME) as (manager, client):
        run(client, "1 + 1")
        cell = run(client, 'for (int i = 0; i < 20_000; i++) { System.out.println("line " + i); }')
        lines = cell.text("stdout").splitlines()
        whole = lines == [f"line {i}" for i in range(20_000)]
        messages = sum(1 for m in cell.messages if m["msg_type"] == "stream")
        say(
            "20,000 lines",
            whole,
            f"{len(lines)} lines in {messages} messages, {cell.seconds:.2f} s",
        )


for check in (check_interrupts, check_signal, check_restart_and_end, check_lines):
    try:
        check()
    except queue.Empty:
        say(check.__name__, False, "no answer from the kernel")
sys.exit(1 if failed else 0)
