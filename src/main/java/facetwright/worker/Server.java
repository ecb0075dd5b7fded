package facetwright.worker;

import facetwright.script.sandbox.ScriptException;
import facetwright.words.Site;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** The worker's side: takes asks from a stream, one at a time, and answers them on another. */
final class Server {
  /**
   * So long after an answer nothing more is asked before the next is made ready for: at first the
   * window paints what came, and has need of the processor.
   */
  private static final long PAUSE_MILLIS = 40;

  private final Evaluator evaluator;
  private final OutputStream out;
  private final Runnable leave;
  private final Runnable rest;
  private final LinkedBlockingQueue<Message.Ask> asks = new LinkedBlockingQueue<>();
  private final Thread bench;
  private long running;
  private long cancelled;

  /**
   * @param leave ends this process; called when an evaluation can't be stopped or the workshop has
   *     gone
   * @param rest called once after answers, when for a while nobody asks
   */
  Server(Evaluator evaluator, OutputStream out, Runnable leave, Runnable rest) {
    this.evaluator = evaluator;
    this.out = out;
    this.leave = leave;
    this.rest = rest;
    this.bench = new Thread(this::work, "facetwright-bench");
    bench.setDaemon(true);
  }

  /** Serves until the stream ends. */
  void serve(InputStream in) {
    try {
      send(new Message.Ready());
      bench.start();
      while (true) {
        switch (Frames.read(in)) {
          case Message.Ask ask -> asks.add(ask);
          case Message.Cancel cancel -> cancel(cancel.id());
          case Message.Ready _, Message.Tried _, Message.Answer _ ->
              throw new IOException("not for a worker");
        }
      }
    } catch (IOException e) {
      leave.run();
    }
  }

  private synchronized void cancel(long id) {
    cancelled = id;
    if (running == id) {
      bench.interrupt();
    }
  }

  private void work() {
    boolean rested = true;
    while (true) {
      try {
        Message.Ask ask = rested ? asks.take() : asks.poll(PAUSE_MILLIS, TimeUnit.MILLISECONDS);
        rested = ask == null;
        if (rested) {
          rest.run();
        } else if (begin(ask.id())) {
          answer(ask);
        } else {
          send(new Message.Answer(ask.id(), new Reply.Stopped(), false));
        }
      } catch (InterruptedException e) {
        // Only an ask under way is ever interrupted.
        return;
      }
    }
  }

  /** False when the ask was cancelled before it began. */
  private synchronized boolean begin(long id) {
    if (cancelled == id) {
      return false;
    }
    running = id;
    return true;
  }

  /** After this, a cancel of the ask that has just ended does not reach the next one. */
  private synchronized void end() {
    running = 0;
    boolean _ = Thread.interrupted();
  }

  private void answer(Message.Ask ask) {
    Reply reply;
    boolean leaving = false;
    try {
      int[] count = {0};
      Runnable tried = () -> send(new Message.Tried(ask.id(), ++count[0]));
      reply = evaluator.answer(ask.request(), tried);
    } catch (ScriptException e) {
      leaving = e.isStillRunning();
      reply = e.kind() == ScriptException.Kind.STOPPED ? new Reply.Stopped() : Reply.Failed.of(e);
    } catch (OutOfMemoryError e) {
      leaving = true;
      reply =
          new Reply.Failed(
              ScriptException.Kind.MEMORY,
              "the design needs more memory than there is",
              Site.NONE,
              "Make it smaller");
    } catch (RuntimeException | Error e) {
      leaving = e instanceof Error;
      reply = Reply.Failed.ofProgram("Facetwright failed while it worked on this design");
    }
    end();
    send(new Message.Answer(ask.id(), reply, leaving));
    if (leaving) {
      leave.run();
    }
  }

  private synchronized void send(Message message) {
    try {
      Frames.write(out, message);
    } catch (Frames.TooLong e) {
      refuse(message, "the design is too large to show", "Make it smaller");
    } catch (IOException e) {
      if (message instanceof Message.Answer(_, Reply.Done _, _)) {
        refuse(message, "Facetwright can't pass this design on", "Report the script");
      } else {
        leave.run();
      }
    }
  }

  private void refuse(Message message, String why, String remedy) {
    if (message instanceof Message.Answer(long id, Reply.Done _, boolean leaving)) {
      Reply failed = new Reply.Failed(ScriptException.Kind.INTERNAL, why, Site.NONE, remedy);
      send(new Message.Answer(id, failed, leaving));
    } else {
      leave.run();
    }
  }
}
