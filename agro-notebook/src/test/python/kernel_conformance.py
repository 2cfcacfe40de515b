"""Runs the kernel tests of the Jupyter project against an installed kernel.

The tests are those of the package jupyter_kernel_test, which checks every message against the
schema of the Jupyter messaging protocol; the samples of Java below complete them.

Usage: kernel_conformance.py [KERNEL_NAME] [options of unittest]
Without a name the environment variable AGRO_KERNEL_NAME is used, then "agro-java".
A test that was skipped counts as a failure, except the one of the pager, which this kernel does
not have.
"""

import os
import sys
import unittest

import jupyter_kernel_test
from jupyter_kernel_test import TIMEOUT, validate_message


def kernel_name():
    if len(sys.argv) > 1 and not sys.argv[1].startswith("-"):
        return sys.argv.pop(1)
    return os.environ.get("AGRO_KERNEL_NAME", "agro-java")


class JavaKernelTests(jupyter_kernel_test.KernelTests):
    kernel_name = kernel_name()
    language_name = "java"
    file_extension = ".jshell"

    code_hello_world = 'System.out.println("hello, world");'
    code_stderr = 'System.err.println("a remark");'

    completion_samples = [
        {"text": "Integer.MAX_V", "matches": {"MAX_VALUE"}},
        {"text": "Math.hypo", "matches": {"hypot"}},
    ]
    complete_code_samples = ["1 + 1", "int n = 3;", "for (int i = 0; i < 3; i++) { }", "class A { }"]
    incomplete_code_samples = ["int sum(int a, int b) {", "if (true) {", "Math.max(1,"]
    invalid_code_samples = ["int x = = 2;", "class { }", ")"]

    code_generate_error = 'throw new IllegalStateException("as expected");'
    code_execute_result = [
        {"code": "6 * 7", "result": "42"},
        {"code": '"pear" + "s"', "result": "pears"},
        {"code": "6 * 8", "result": "48"},
    ]
    code_display_data = [{"code": 'display("shown");', "mime": "text/plain"}]
    code_history_pattern = "6 ? 7"
    supported_history_operations = ("tail", "range", "search")
    code_inspect_sample = "Math.max"
    code_clear_output = 'System.out.println("gone"); clearOutput(false);'

    def reply_to(self, msg_id):
        while True:
            reply = self.kc.get_shell_msg(timeout=TIMEOUT)
            if reply["parent_header"].get("msg_id") == msg_id:
                return reply

    def test_silent(self):
        self.flush_channels()
        counted, _ = self.execute_helper("1 + 1")
        reply, outputs = self.execute_helper(
            'System.out.println("unheard"); 1 + 1', silent=True
        )
        self.assertEqual(reply["content"]["status"], "ok")
        self.assertEqual(
            reply["content"]["execution_count"], counted["content"]["execution_count"]
        )
        self.assertEqual(outputs, [])

    def test_stop_on_error(self):
        self.flush_channels()
        failing = self.kc.execute(self.code_generate_error)
        behind = self.kc.execute("1 + 1")
        also_behind = self.kc.execute("2 + 2", silent=True)
        self.assertEqual(self.reply_to(failing)["content"]["status"], "error")
        self.assertEqual(self.reply_to(behind)["content"]["status"], "aborted")
        self.assertEqual(self.reply_to(also_behind)["content"]["status"], "aborted")

    def test_go_on_after_error(self):
        self.flush_channels()
        failing = self.kc.execute(self.code_generate_error, stop_on_error=False)
        behind = self.kc.execute("1 + 1")
        self.assertEqual(self.reply_to(failing)["content"]["status"], "error")
        self.assertEqual(self.reply_to(behind)["content"]["status"], "ok")

    def test_user_expressions(self):
        self.flush_channels()
        msg_id = self.kc.execute(
            "int base = 20;", user_expressions={"twice": "base * 2", "wrong": "basis"}
        )
        reply = self.reply_to(msg_id)
        validate_message(reply, "execute_reply", msg_id)
        values = reply["content"]["user_expressions"]
        self.assertEqual(values["twice"]["status"], "ok")
        self.assertEqual(values["twice"]["data"]["text/plain"], "40")
        self.assertEqual(values["wrong"]["status"], "error")

    def test_comm_info(self):
        self.flush_channels()
        msg_id = self.kc.comm_info()
        reply = self.reply_to(msg_id)
        validate_message(reply, "comm_info_reply", msg_id)
        self.assertEqual(reply["content"]["comms"], {})

    def test_input(self):
        self.flush_channels()
        msg_id = self.kc.execute(
            'System.out.print(new Scanner(System.in).nextLine().length());', allow_stdin=True
        )
        asked = self.kc.get_stdin_msg(timeout=TIMEOUT)
        self.kc.input("seven77")
        # The schema of the package wants a number for "password", the protocol a boolean.
        self.assertEqual(asked["msg_type"], "input_request")
        self.assertEqual(asked["parent_header"]["msg_id"], msg_id)
        self.assertIs(asked["content"]["password"], False)
        self.assertIsInstance(asked["content"]["prompt"], str)
        self.assertEqual(self.reply_to(msg_id)["content"]["status"], "ok")

    def test_interrupt(self):
        self.flush_channels()
        msg_id = self.kc.execute("Thread.sleep(60_000);")
        while True:
            message = self.kc.get_iopub_msg(timeout=TIMEOUT)
            if message["msg_type"] == "execute_input":
                break
        self.km.interrupt_kernel()
        self.assertEqual(self.reply_to(msg_id)["content"]["status"], "error")


class StrictResult(unittest.TextTestResult):
    def addSkip(self, test, reason):
        if test.id().endswith("test_pager"):
            super().addSkip(test, reason)
        else:
            self.addFailure(test, (AssertionError, AssertionError("skipped: " + reason), None))

    def addSubTest(self, test, subtest, err):
        if err is not None and issubclass(err[0], unittest.SkipTest):
            err = (AssertionError, AssertionError("skipped: " + str(subtest)), None)
        super().addSubTest(test, subtest, err)


if __name__ == "__main__":
    unittest.main(testRunner=unittest.TextTestRunner(verbosity=2, resultclass=StrictResult))
