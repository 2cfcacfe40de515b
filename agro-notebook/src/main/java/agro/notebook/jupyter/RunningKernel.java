package agro.notebook.jupyter;

import agro.report.InputProblem;
import com.google.gson.JsonObject;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/**
 * A kernel of the Jupyter messaging protocol: five sockets around one evaluator of cells. The
 * sockets answer before the evaluator is there, and go on whatever a cell does.
 */
final class RunningKernel implements AutoCloseable {

  private static final long FLUSH_MILLIS = 250;
  private static final long CLOSE_MILLIS = 400;

  /**
   * What may differ between kernels.
   *
   * @param historyFolder where the history is kept; empty to keep none in a file
   * @param waitingBytes how many bytes of output may wait for a front end that reads slowly
   */
  record Settings(Optional<Path> historyFolder, long waitingBytes) {
    Settings {
      Objects.requireNonNull(historyFolder, "historyFolder");
    }

    /** What a kernel of a front end has. */
    static Settings usual() {
      return new Settings(CellHistory.usualFolder(), OutputQueue.USUAL_LIMIT);
    }
  }

  private final Complaints complaints;
  private final Publisher publisher;
  private final RequestQueue requests = new RequestQueue();
  private final WarmEvaluator evaluator = new WarmEvaluator();
  private final Interruption interruption;
  private final CommRegistry comms;
  private final CellHistory history;
  private final KernelSockets sockets;
  private final RequestHandlers handlers;
  private final CountDownLatch ending = new CountDownLatch(1);
  private volatile boolean closed;

  private RunningKernel(ConnectionFile connection, Settings settings, PrintWriter err) {
    complaints = new Complaints(err);
    history = new CellHistory(settings.historyFolder(), complaints);
    // The slowest part begins first, on a thread of its own. Afterwards that thread counts the
    // sessions of the history, which may be long, so that no cell need wait for it.
    evaluator.start(history::session);
    var session = session(connection);
    var format = new WireFormat(MessageSigner.of(connection.signature()), session);
    publisher = new Publisher(new OutputQueue(settings.waitingBytes()), format, complaints);
    interruption = new Interruption(evaluator, publisher.queue());
    comms = new CommRegistry(publisher.queue(), session);
    var questions = new ReaderQuestions(publisher.queue());
    handlers = new RequestHandlers(publisher, complaints, services(questions));
    var desk = new RequestDesk(format, requests, questions, handlers);
    sockets = new KernelSockets(connection, desk, complaints);
  }

  /**
   * Opens a kernel.
   *
   * @param connection where to listen
   * @param settings what may differ between kernels
   * @param err where troubles are told
   * @return a kernel whose sockets are bound and served
   * @throws InputProblem when it cannot listen there
   */
  static RunningKernel open(ConnectionFile connection, Settings settings, PrintWriter err) {
    var kernel = new RunningKernel(connection, settings, err);
    kernel.start();
    return kernel;
  }

  /** A name that no other run of a kernel on this machine has: two never share time and port. */
  private static String session(ConnectionFile connection) {
    return Long.toHexString(System.currentTimeMillis())
        + "-"
        + Long.toHexString(System.nanoTime())
        + "-"
        + Integer.toHexString(connection.ports().shell());
  }

  private Map<String, RequestHandlers.Handler> services(ReaderQuestions questions) {
    var execution =
        new CodeExecution(evaluator, publisher, questions, interruption, requests, history);
    var code = new CodeQuestions(evaluator);
    var past = new HistoryQuestions(history);
    var messages = new CommMessages(comms, evaluator, publisher.queue(), interruption);
    var all = new HashMap<String, RequestHandlers.Handler>();
    all.put("kernel_info_request", request -> KernelInfo.reply());
    all.put("execute_request", execution::execute);
    all.put("complete_request", code::complete);
    all.put("inspect_request", code::inspect);
    all.put("is_complete_request", code::isComplete);
    all.put("history_request", past::answer);
    all.put("comm_info_request", comms::info);
    all.put("comm_open", messages::opened);
    all.put("comm_msg", messages::received);
    all.put("comm_close", messages::closed);
    all.put("interrupt_request", request -> interrupted());
    all.put("shutdown_request", this::shutDown);
    all.put(
        "debug_request",
        request -> RequestHandlers.error("No debugger", "this kernel has no debugger"));
    return all;
  }

  private void start() {
    Comms.use(comms);
    publisher.start(sockets.outputs(), sockets.stdin());
    publisher.status(new JsonObject(), "starting");
    sockets.start();
    var executor = LastingThreads.thread(this::serveAll, "executor", complaints);
    executor.start();
  }

  private void serveAll() {
    while (!closed) {
      try {
        var request = requests.take();
        if (request == null) {
          return;
        }
        SpareMemory.keep();
        comms.beginRequest(request.header());
        handlers.serve(request);
      } catch (InterruptedException e) {
        complaints.about("executor", e);
      }
    }
  }

  /** Where troubles are told. */
  Complaints complaints() {
    return complaints;
  }

  /** The ports that the kernel listens at. */
  ConnectionFile.Ports ports() {
    return sockets.ports();
  }

  /** Interrupts the cell that runs, if one does. */
  void interrupt() {
    interruption.interrupt();
  }

  private JsonObject interrupted() {
    interrupt();
    return Json.status("ok");
  }

  private JsonObject shutDown(Request request) {
    var reply = Json.status("ok");
    reply.addProperty("restart", Json.flag(request.content(), "restart", false));
    publisher.publish("shutdown_reply", request.header(), reply);
    request.afterwards(this::end);
    return reply;
  }

  /** Lets {@link #awaitEnd} return. */
  void end() {
    ending.countDown();
  }

  /** Waits until a front end, or {@link #end}, wants the kernel to end. */
  void awaitEnd() throws InterruptedException {
    ending.await();
  }

  /** Ends the cell that runs, sends what waits as far as anybody reads it, and closes. */
  @Override
  public void close() {
    closed = true;
    end();
    interrupt();
    Comms.forget(comms);
    requests.close();
    publisher.close();
    try {
      publisher.awaitEnd(FLUSH_MILLIS);
      sockets.close(CLOSE_MILLIS);
      var closing = LastingThreads.thread(evaluator::close, "close", complaints);
      closing.start();
      closing.join(FLUSH_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
