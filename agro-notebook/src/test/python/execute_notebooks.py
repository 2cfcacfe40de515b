"""Executes notebooks through nbclient and turns them into pages through nbconvert.

usage: execute_notebooks.py KERNEL FOLDER NOTEBOOK...

FOLDER is where the cells run. For each notebook one line is printed: its name, then the number of
code cells, pictures, tables and errors. The exit status is 1 when a cell failed that was not expected
to, or did not fail though it was.
"""

import pathlib
import sys
import time

import nbformat
from nbclient import NotebookClient
from nbclient.exceptions import CellExecutionError
from nbconvert import HTMLExporter

PATIENCE = 300


def count(outputs, test):
    return sum(1 for output in outputs if test(output.get("data", {})))


def failed(cell):
    return any(output.output_type == "error" for output in cell.outputs)


def expected_to_fail(cell):
    return "raises-exception" in cell.metadata.get("tags", [])


def execute(path, kernel, folder):
    notebook = nbformat.read(path, as_version=4)
    nbformat.validate(notebook)
    started = time.perf_counter()
    client = NotebookClient(
        notebook,
        timeout=PATIENCE,
        kernel_name=kernel,
        resources={"metadata": {"path": str(folder)}},
    )
    try:
        client.execute()
    except CellExecutionError as failure:
        print(f"{path.name}: {failure}", file=sys.stderr)
    seconds = time.perf_counter() - started
    nbformat.validate(notebook)
    cells = [cell for cell in notebook.cells if cell.cell_type == "code"]
    outputs = [output for cell in cells for output in cell.outputs]
    errors = [cell for cell in cells if failed(cell) != expected_to_fail(cell)]
    unrun = [cell for cell in cells if cell.source.strip() and not cell.execution_count]
    pictures = count(outputs, lambda data: "image/png" in data)
    tables = count(outputs, lambda data: "<table" in data.get("text/html", ""))
    page, _ = HTMLExporter().from_notebook_node(notebook)
    shown = page.count("data:image/png;base64,")
    print(
        f"{path.name}: {len(cells)} cells, {pictures} pictures, {tables} tables,"
        f" {len(errors)} errors, {len(unrun)} not run, {shown} pictures on the page,"
        f" {seconds:.1f} s"
    )
    return not errors and not unrun and shown >= pictures


def main():
    kernel, folder, *notebooks = sys.argv[1:]
    well = [execute(pathlib.Path(path), kernel, pathlib.Path(folder)) for path in notebooks]
    sys.exit(0 if well and all(well) else 1)


main()
