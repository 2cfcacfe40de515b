package agro.stats;

import agro.report.Progress;
import java.util.ArrayList;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/**
 * Runs the refits of a bootstrap on several threads. Refit i draws from a source of chance made
 * from the seed and i alone, so the result does not depend on how many threads there are.
 *
 * <p>Efron and Tibshirani 1993, An Introduction to the Bootstrap (from memory).
 */
public final class Bootstrap {

  private static final int BLOCK = 20;
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private final int replicates;
  private final int width;
  private final long seed;
  private final Progress progress;
  private final double[][] values;
  private final RefitOutcome[] outcomes;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicInteger done = new AtomicInteger();
  private final AtomicReference<Throwable> failure = new AtomicReference<>();

  private Bootstrap(int replicates, int width, long seed, Progress progress) {
    if (replicates < 1 || width < 1) {
      throw new IllegalArgumentException(
          "a bootstrap needs refits and values, but got " + replicates + " and " + width);
    }
    this.replicates = replicates;
    this.width = width;
    this.seed = seed;
    this.progress = progress;
    values = new double[replicates][];
    outcomes = new RefitOutcome[replicates];
  }

  /**
   * Runs a bootstrap on as many threads as the machine has processors.
   *
   * @param replicates number of refits
   * @param width number of values that each refit gives
   * @param seed start of all chance
   * @param progress hears how far the work is, on the calling thread
   * @param refits makes a worker for each thread
   * @return the values of all refits
   * @throws CancellationException when the listener cancels
   */
  public static BootstrapSample run(
      int replicates, int width, long seed, Progress progress, Supplier<Refit> refits) {
    return run(
        replicates, width, seed, progress, refits, Runtime.getRuntime().availableProcessors());
  }

  /**
   * Runs a bootstrap on a given number of threads, which changes nothing but the time it takes.
   *
   * @param replicates number of refits
   * @param width number of values that each refit gives
   * @param seed start of all chance
   * @param progress hears how far the work is, on the calling thread
   * @param refits makes a worker for each thread
   * @param threads number of threads, the calling one included
   * @return the values of all refits
   * @throws CancellationException when the listener cancels
   */
  public static BootstrapSample run(
      int replicates,
      int width,
      long seed,
      Progress progress,
      Supplier<Refit> refits,
      int threads) {
    return new Bootstrap(replicates, width, seed, progress).run(refits, threads);
  }

  private BootstrapSample run(Supplier<Refit> refits, int threads) {
    var others = new ArrayList<Thread>();
    for (int i = 1; i < Math.min(threads, replicates / BLOCK); i++) {
      var refit = refits.get();
      var thread = new Thread(() -> work(refit, false), "bootstrap " + i);
      thread.setDaemon(true);
      thread.start();
      others.add(thread);
    }
    try {
      work(refits.get(), true);
    } finally {
      others.forEach(Bootstrap::join);
    }
    rethrow();
    progress.step("bootstrap", replicates, replicates);
    return new BootstrapSample(values, outcomes, width);
  }

  private void work(Refit refit, boolean tells) {
    try {
      for (int from = next.getAndAdd(BLOCK);
          from < replicates && failure.get() == null;
          from = next.getAndAdd(BLOCK)) {
        int to = Math.min(replicates, from + BLOCK);
        for (int i = from; i < to; i++) {
          values[i] = new double[width];
          outcomes[i] = refit.refit(source(i), values[i]);
        }
        int sofar = done.addAndGet(to - from);
        if (tells) {
          progress.step("bootstrap", Math.min(sofar, replicates), replicates);
        }
      }
    } catch (RuntimeException | Error problem) {
      failure.compareAndSet(null, problem);
    }
  }

  /**
   * Chance of one refit. Streams whose seeds lie one step apart are one stream that begins a draw
   * later; only split from them they are apart.
   */
  private SplittableRandom source(int refit) {
    return new SplittableRandom(seed + GOLDEN * (refit + 1)).split();
  }

  private void rethrow() {
    var problem = failure.get();
    if (problem instanceof Error error) {
      throw error;
    }
    if (problem instanceof RuntimeException exception) {
      throw exception;
    }
  }

  private static void join(Thread thread) {
    boolean interrupted = false;
    while (thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
