#!/usr/bin/env python3
"""How long a bilingual print takes, against a browser and an office program on the same content.

By hand, on a machine with a release build, chromium, libreoffice-writer and poppler-utils:

    cargo build --release && python3 benches/paper.py [PAGE-LANGUAGES]

Starts the demo in an empty folder, asks for the print of its half-zip in English and Chinese (or
the two languages given, as in `en,vi`), turns that PDF into HTML with the same texts and pictures,
and has Chromium print and LibreOffice convert it. Each three times; the fastest counts. Memory is
the largest resident set of the process that does the work, its children counted in.
"""

import http.cookiejar
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import threading
import time
import urllib.parse
import urllib.request

ROUNDS = 3
ROOT = pathlib.Path(__file__).resolve().parent.parent
PROGRAM = ROOT / os.environ.get("CARGO_TARGET_DIR", "target") / "release" / "fellseam"
CHROMIUM = [
    "chromium", "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic",
    "--no-first-run", "--disable-background-networking", "--disable-component-update",
    "--disable-sync", "--no-pdf-header-footer",
]


def processes():
    """Every process: its number, its parent, and its resident memory in MiB."""
    for folder in pathlib.Path("/proc").iterdir():
        if not folder.name.isdigit():
            continue
        try:
            status = (folder / "status").read_text()
            words = (folder / "cmdline").read_bytes().split(b"\0")
        except OSError:
            continue
        parent = int(re.search(r"^PPid:\s+(\d+)", status, re.M).group(1))
        memory = re.search(r"^VmRSS:\s+(\d+)", status, re.M)
        yield int(folder.name), parent, int(memory.group(1)) / 1024 if memory else 0, words


class Memory(threading.Thread):
    """The most memory that the descendants of a process take together."""

    def __init__(self, of, only=None):
        super().__init__(daemon=True)
        self.of, self.only, self.most, self.ends = of, only, 0.0, False

    def run(self):
        while not self.ends:
            all_ = list(processes())
            ours, more = {self.of}, True
            while more:
                found = {number for number, parent, _, _ in all_ if parent in ours} - ours
                ours, more = ours | found, bool(found)
            counted = [
                memory for number, _, memory, words in all_
                if number in ours and (self.only is None or self.only in words)
            ]
            self.most = max(self.most, sum(counted))
            time.sleep(0.01)


def runs(command, **more):
    """The fastest of some runs in seconds, and the memory of the hungriest in MiB."""
    best, most = float("inf"), 0.0
    for _ in range(ROUNDS):
        began = time.monotonic()
        child = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, **more)
        memory = Memory(child.pid)
        memory.start()
        if child.wait() != 0:
            sys.exit(f"{command[0]} failed")
        best = min(best, time.monotonic() - began)
        memory.ends = True
        most = max(most, memory.most)
    return best, most


def main():
    languages = sys.argv[1] if len(sys.argv) > 1 else "en,zh-Hans"
    one, other = languages.split(",")
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        demo = subprocess.Popen(
            [PROGRAM, "demo", "--data", folder / "data", "--listen", "127.0.0.1:0"],
            stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True,
        )
        try:
            compare(demo, folder, one, other)
        finally:
            demo.terminate()
            demo.wait()


def compare(demo, folder, one, other):
    designer, link = False, None
    for line in demo.stdout:
        designer = designer or line.startswith("Designer")
        found = re.search(r"(http://\S+/join/\S+)", line)
        if designer and found and link is None:
            link = found.group(1)
        if line.startswith("Ctrl-C"):
            break
    browser = urllib.request.build_opener(
        urllib.request.HTTPCookieProcessor(http.cookiejar.CookieJar())
    )
    address = "{0.scheme}://{0.netloc}".format(urllib.parse.urlsplit(link))
    fields = {"name": "Iris", "language": "en"}
    browser.open(link, urllib.parse.urlencode(fields).encode())
    styles = browser.open(address + "/styles").read().decode()
    style = re.search(r'href="(/styles/[0-9a-f-]+)"[^>]*>[^<]*HT-204', styles).group(1)
    best, pdf = float("inf"), b""
    memory = Memory(demo.pid, only=b"render")
    memory.start()
    query = urllib.parse.urlencode({"language": one, "second": other})
    for _ in range(ROUNDS):
        # A draft is printed anew each time, by a process of its own.
        began = time.monotonic()
        pdf = browser.open(f"{address}{style}/draft/paper?{query}").read()
        best = min(best, time.monotonic() - began)
    memory.ends = True
    rows = [("fellseam", best, memory.most)]

    file = folder / "print.pdf"
    file.write_bytes(pdf)
    said = subprocess.run(["pdfinfo", file], capture_output=True, text=True, check=True).stdout
    pages = re.search(r"^Pages:\s+(\d+)", said, re.M).group(1)
    subprocess.run(["pdftohtml", "-s", "-noframes", "-q", file, folder / "print.html"], check=True)
    html = (folder / "print.html").as_uri()
    profile = folder / "profile"
    chromium = CHROMIUM + [f"--user-data-dir={profile}", f"--print-to-pdf={folder / 'chromium.pdf'}", html]
    rows.append(("chromium", *runs(chromium)))
    if shutil.which("soffice"):
        office = [
            "soffice", "--headless", f"-env:UserInstallation={(folder / 'office').as_uri()}",
            "--convert-to", "pdf", "--outdir", folder / "office-out", folder / "print.html",
        ]
        rows.append(("libreoffice", *runs(office)))
    else:
        print("libreoffice is not installed")
    print(f"{pages} pages in {one} and {other}, {len(pdf) / 1024:.0f} KiB; the fastest of {ROUNDS}")
    print(f"{'':12}{'seconds':>10}{'times':>8}{'MiB':>8}{'times':>8}")
    for name, seconds, memory in rows:
        times, more = seconds / rows[0][1], memory / max(rows[0][2], 1)
        print(f"{name:12}{seconds:10.2f}{times:8.1f}{memory:8.0f}{more:8.1f}")


if __name__ == "__main__":
    main()
