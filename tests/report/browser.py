"""A headless Chromium, driven over a pipe through its debugging protocol: nothing but the browser and Python is needed."""

import base64
import json
import os
import select
import shutil
import subprocess
import tempfile
import time

# The smallest first: chromium-headless-shell is what tools/setup installs for the tests.
NAMES = ["chromium-headless-shell", "chromium", "chromium-browser", "google-chrome", "google-chrome-stable"]

# WebGL is drawn by software; the rest of the page by the processor too, which is three times faster than through an
# emulated graphics card.
FLAGS = ["--headless", "--no-sandbox", "--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--disable-quic", "--no-first-run",
         "--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",
         "--disable-dev-shm-usage", "--disable-gpu-rasterization", "--remote-debugging-pipe"]


def find():
    """The path of a Chromium, or None."""
    wish = os.environ.get("SINEWRIGHT_BROWSER")
    return wish or next((path for path in map(shutil.which, NAMES) if path), None)


class Browser:
    """with Browser() as browser: browser.open(path); browser.run("1 + 1")"""

    def __init__(self, *flags):
        self.flags = flags

    def __enter__(self):
        self.profile = tempfile.mkdtemp(prefix="sinewright-browser-")
        down_read, self.down = os.pipe()
        self.up, up_write = os.pipe()

        def pipes():
            # The protocol is spoken on descriptors 3 and 4, which may themselves be ends of the pipes just made.
            read, write = os.dup(down_read), os.dup(up_write)
            read, write = _above(read, 10), _above(write, 11)
            os.dup2(read, 3)
            os.dup2(write, 4)

        self.process = subprocess.Popen([find(), *FLAGS, *self.flags, f"--user-data-dir={self.profile}", "about:blank"],
                                        preexec_fn=pipes, close_fds=False, stdin=subprocess.DEVNULL,
                                        stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        os.close(down_read)
        os.close(up_write)
        self.buffer, self.number, self.events, self.session = b"", 0, [], None
        target = self.send("Target.createTarget", url="about:blank")["targetId"]
        self.session = self.send("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
        for domain in ("Page", "Runtime", "Log", "Network"):
            self.send(f"{domain}.enable")
        self.size(1280, 900)
        return self

    def __exit__(self, *_):
        try:
            self.session = None
            self.send("Browser.close")
            self.process.wait(10)
        except Exception:  # it is gone already, or hangs
            self.process.kill()
            self.process.wait()
        os.close(self.down)
        os.close(self.up)
        shutil.rmtree(self.profile, ignore_errors=True)

    # --- the protocol

    def _message(self, seconds):
        end = time.monotonic() + seconds
        while b"\0" not in self.buffer:
            left = end - time.monotonic()
            if left <= 0 or not select.select([self.up], [], [], left)[0]:
                return None
            got = os.read(self.up, 1 << 20)
            if not got:
                raise RuntimeError("the browser closed the pipe")
            self.buffer += got
        text, self.buffer = self.buffer.split(b"\0", 1)
        return json.loads(text)

    def send(self, method, seconds=60, **parameters):
        self.number += 1
        message = {"id": self.number, "method": method, "params": parameters}
        if self.session:
            message["sessionId"] = self.session
        data = json.dumps(message).encode() + b"\0"
        while data:
            data = data[os.write(self.down, data):]
        end = time.monotonic() + seconds
        while True:
            got = self._message(max(end - time.monotonic(), 0.01))
            if got is None:
                raise TimeoutError(f"no answer to {method} within {seconds} s")
            if got.get("id") == self.number:
                if "error" in got:
                    raise RuntimeError(f"{method}: {got['error']['message']}")
                return got.get("result", {})
            if "method" in got:
                self.events.append(got)

    # --- what the tests say

    def size(self, width, height, scale=1, touch=False):
        self.send("Emulation.setDeviceMetricsOverride", width=width, height=height, deviceScaleFactor=scale, mobile=touch)

    def dark(self, on=True):
        self.send("Emulation.setEmulatedMedia", features=[{"name": "prefers-color-scheme", "value": "dark" if on else "light"}])

    def open(self, path, fragment=""):
        """Loads a file and waits for the page to say that it is ready; returns the milliseconds it took by its own clock."""
        self.send("Page.navigate", url="about:blank")   # a new fragment alone would not load it anew
        self.events.clear()
        self.send("Page.navigate", url=f"file://{os.path.abspath(path)}{fragment}")
        ready = self.wait("document.getElementById('review')?.dataset.ready", 30)
        self.run("new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(1))))")
        return int(ready)

    def run(self, expression):
        result = self.send("Runtime.evaluate", expression=expression, returnByValue=True, awaitPromise=True)
        if "exceptionDetails" in result:
            raise RuntimeError(result["exceptionDetails"].get("exception", {}).get("description", str(result["exceptionDetails"])))
        return result["result"].get("value")

    def wait(self, expression, seconds=10):
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            value = self.run(expression)
            if value:
                return value
            time.sleep(0.05)
        raise TimeoutError(f"not true within {seconds} s: {expression}; complaints: {self.complaints()}")

    def complaints(self):
        """Errors and warnings of the console, and what was not caught."""
        said = []
        for event in self.events:
            method, what = event["method"], event["params"]
            if method == "Runtime.consoleAPICalled" and what["type"] in ("error", "warning", "assert"):
                said.append(" ".join(str(a.get("value", a.get("description"))) for a in what["args"]))
            if method == "Runtime.exceptionThrown":
                said.append(what["exceptionDetails"].get("exception", {}).get("description", what["exceptionDetails"]["text"]))
            if method == "Log.entryAdded" and what["entry"]["level"] in ("error", "warning"):
                said.append(what["entry"]["text"])
        return said

    def requests(self):
        return [e["params"]["request"]["url"] for e in self.events if e["method"] == "Network.requestWillBeSent"]

    def press(self, key, code=None, shift=False):
        text = {"Space": " ", "Enter": "\r"}.get(key)
        name = " " if key == "Space" else key
        for kind in ("keyDown", "keyUp"):
            more = {"text": text} if text and kind == "keyDown" else {}
            self.send("Input.dispatchKeyEvent", type=kind, key=name, code=code or key, modifiers=8 if shift else 0, **more)

    def mouse(self, kind, x, y, button="left"):
        self.send("Input.dispatchMouseEvent", type=kind, x=x, y=y, button=button, buttons=1, clickCount=1)

    def click(self, selector):
        """Where a reader would click: on the middle of it, scrolled into sight."""
        box = self.run(f"(() => {{ const e = document.querySelector({json.dumps(selector)}); e.scrollIntoView({{block: 'center', behavior: 'instant'}});"
                       "const b = e.getBoundingClientRect(); return [b.left + b.width / 2, b.top + b.height / 2]; })()")
        for kind in ("mousePressed", "mouseReleased"):
            self.mouse(kind, *box)

    def picture(self, selector=None, whole=False):
        """A PNG of what is seen, of one element, or of the whole page."""
        more = {}
        if selector:
            x, y, w, h = self.run(f"(() => {{ const e = document.querySelector({json.dumps(selector)}); e.scrollIntoView({{block: 'center', behavior: 'instant'}});"
                                  "const b = e.getBoundingClientRect(); return [b.left + scrollX, b.top + scrollY, b.width, b.height]; })()")
            more = {"clip": {"x": x, "y": y, "width": w, "height": h, "scale": 1}}
        elif whole:
            w, h = self.run("[document.documentElement.clientWidth, document.documentElement.scrollHeight]")
            more = {"clip": {"x": 0, "y": 0, "width": w, "height": h, "scale": 1}, "captureBeyondViewport": True}
        return base64.b64decode(self.send("Page.captureScreenshot", format="png", **more)["data"])

    def pdf(self):
        return base64.b64decode(self.send("Page.printToPDF", preferCSSPageSize=True, printBackground=True)["data"])


def _above(descriptor, least):
    import fcntl
    return fcntl.fcntl(descriptor, fcntl.F_DUPFD, least)
