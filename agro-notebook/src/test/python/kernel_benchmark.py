"""Times kernels side by side and prints a table of medians.

usage: kernel_benchmark.py [--runs N] [--reference KERNEL] [--variants] [KERNEL...]

The kernels (default agro-java) and the reference (default python3, which is ipykernel) take turns, N
times each (default 9). Run it in the top folder of the project, on a machine that does nothing else;
the load is printed with the table. With --variants two more kernels are made from the spec of the
first: one without its class-data archive, one without its agent.
"""

import argparse
import json
import os
import pathlib
import queue
import shutil
import statistics
import tempfile
import time

import zmq
from jupyter_client.kernelspec import KernelSpecManager
from jupyter_client.manager import KernelManager

from kernel_session import PATIENCE, run

MAIN_CLASS = "agro.notebook.command.Main"
WARM_CELLS = 50

JAVA = {
    "cells": [
        "import java.util.function.*;",
        "int moths = 3;",
        "double half(double x) { return x / 2; }",
        "half(moths)",
        'var words = List.of("egg", "larva", "pupa");',
        "words.stream().mapToInt(String::length).sum()",
        'String shout(String word) { return word.toUpperCase() + "!"; }',
        'System.out.println(shout("moth"));',
        "for (int i = 0; i < 3; i++) { moths += i; } moths",
    ],
    "trivial": "1 + {}",
    "lines": 'for (int i = 0; i < 20_000; i++) { System.out.println("line " + i); }',
    "first": 'import agro.generation.*;\nimport agro.notebook.figure.*;\nimport agro.season.*;\n'
    'var season = SeasonFolder.read(Path.of("demo-data/osmere-vale")).asOf("").chosen("", "");\n'
    "season",
}
PYTHON = {
    "cells": [
        "import functools",
        "moths = 3",
        "def half(x):\n    return x / 2",
        "half(moths)",
        'words = ["egg", "larva", "pupa"]',
        "sum(len(word) for word in words)",
        'def shout(word):\n    return word.upper() + "!"',
        'print(shout("moth"))',
        "for i in range(3):\n    moths += i\nmoths",
    ],
    "trivial": "1 + {}",
    "lines": 'for i in range(20_000):\n    print("line", i)',
    "first": None,
}
MEASURES = {
    "info": "start to kernel_info, s",
    "result": "start to the result of 1+1, s",
    "work": "processor time up to that result, s",
    "tenth": "start to the tenth cell, s",
    "trivial": "trivial cell, median of 50, ms",
    "lines": "20,000 lines, s",
    "lost": "lines lost",
    "first": "start to the first cell of notebook 01, s",
    "memory": "memory after it, MiB",
}


def started(name):
    """A kernel that has just been started, and the moment."""
    manager = KernelManager(kernel_name=name)
    # A client that tries to connect ten times a second would add up to a tenth to every start.
    manager.context.setsockopt(zmq.RECONNECT_IVL, 5)
    at = time.perf_counter()
    manager.start_kernel()
    client = manager.client()
    client.start_channels(hb=False)
    return manager, client, at


def answer(client, request):
    while True:
        reply = client.get_shell_msg(timeout=PATIENCE)
        if reply["parent_header"].get("msg_id") == request:
            return reply["content"]


def replied(client, code):
    """Evaluates a cell and waits for the reply alone: what is shown at first may be missed."""
    content = answer(client, client.execute(code))
    if content["status"] != "ok":
        raise SystemExit(f"a cell failed: {code}: {content}")


def joined(client):
    """Waits until what the kernel shows arrives here."""
    while True:
        answer(client, client.kernel_info())
        try:
            client.get_iopub_msg(timeout=0.2)
            return
        except queue.Empty:
            pass


def stopped(manager, client):
    client.stop_channels()
    manager.shutdown_kernel(now=True)


def resident(manager):
    status = pathlib.Path(f"/proc/{manager.provisioner.process.pid}/status").read_text()
    line = next(line for line in status.splitlines() if line.startswith("VmRSS:"))
    return int(line.split()[1]) / 1024


def worked(manager):
    """The time that processors have spent on the kernel, which other programs hardly change."""
    stat = pathlib.Path(f"/proc/{manager.provisioner.process.pid}/stat").read_text()
    user, system = stat.rpartition(")")[2].split()[11:13]
    return (int(user) + int(system)) / os.sysconf("SC_CLK_TCK")


def evaluated(client, code):
    cell = run(client, code)
    if cell.status != "ok":
        raise SystemExit(f"a cell failed: {code}: {cell.reply['content']}")
    return cell


def measure(name, code):
    found = {}
    manager, client, at = started(name)
    try:
        answer(client, client.kernel_info())
        found["info"] = time.perf_counter() - at
        replied(client, "1 + 1")
        found["result"] = time.perf_counter() - at
        found["work"] = worked(manager)
        for cell in code["cells"]:
            replied(client, cell)
        found["tenth"] = time.perf_counter() - at
        joined(client)
        warm = [evaluated(client, code["trivial"].format(i)) for i in range(2 * WARM_CELLS)]
        found["trivial"] = 1000 * statistics.median(cell.seconds for cell in warm[WARM_CELLS:])
        lines = evaluated(client, code["lines"])
        found["lines"] = lines.seconds
        found["lost"] = 20_000 - len(lines.text("stdout").splitlines())
    finally:
        stopped(manager, client)
    if code["first"]:
        manager, client, at = started(name)
        try:
            answer(client, client.kernel_info())
            replied(client, code["first"])
            found["first"] = time.perf_counter() - at
            found["memory"] = resident(manager)
        finally:
            stopped(manager, client)
    return found


def variants(name, folder):
    """Specs beside that of a kernel which lack one of its means."""
    specs = KernelSpecManager().find_kernel_specs()
    spec = json.loads((pathlib.Path(specs[name]) / "kernel.json").read_text())
    argv = spec["argv"]
    jar = argv.index("-jar")
    made = {
        f"{name}-no-archive": [a for a in argv if "SharedArchive" not in a and "-Xshare" not in a],
        f"{name}-no-agent": argv[:jar] + ["-cp", argv[jar + 1], MAIN_CLASS] + argv[jar + 2 :],
    }
    for variant, arguments in made.items():
        target = folder / "kernels" / variant
        target.mkdir(parents=True)
        (target / "kernel.json").write_text(json.dumps({**spec, "argv": arguments}))
    return list(made)


def table(measured, reference):
    width = max(len(name) for name in measured) + 1
    print(f"{'':44}" + "".join(f"{name:>{max(width, 20)}}" for name in measured))
    for key, label in MEASURES.items():
        row = f"{label:44}"
        base = median(measured[reference], key)
        for name, runs in measured.items():
            value = median(runs, key)
            if value is None:
                text = "-"
            elif key == "lost":
                text = f"{sum(run[key] for run in runs)}"
            else:
                ratio = "" if not base or name == reference else f" ({value / base:.2f} x)"
                text = f"{value:.3g}{ratio}"
            row += f"{text:>{max(width, 20)}}"
        print(row)


def median(runs, key):
    values = [run[key] for run in runs if key in run]
    return statistics.median(values) if values else None


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--runs", type=int, default=9)
    parser.add_argument("--reference", default="python3")
    parser.add_argument("--variants", action="store_true")
    parser.add_argument("kernels", nargs="*", default=["agro-java"])
    given = parser.parse_args()
    folder = pathlib.Path(tempfile.mkdtemp(prefix="agro-benchmark-"))
    os.environ["JUPYTER_PATH"] = f"{folder}{os.pathsep}{os.environ.get('JUPYTER_PATH', '')}"
    try:
        names = list(given.kernels)
        if given.variants:
            names += variants(names[0], folder)
        before = os.getloadavg()[0]
        measured = {name: [] for name in [given.reference, *names]}
        for _ in range(given.runs):
            for name in measured:
                code = PYTHON if name == given.reference else JAVA
                measured[name].append(measure(name, code))
        print(
            f"medians of {given.runs} runs by turns; processors {os.cpu_count()},"
            f" load {before:.1f} before and {os.getloadavg()[0]:.1f} after"
        )
        table(measured, given.reference)
    finally:
        shutil.rmtree(folder)


main()
