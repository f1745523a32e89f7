package dev.injectorplanner.app.testkit;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A port that leads to another one until it is shut, as a database's does that is stopped. */
public final class Relay implements AutoCloseable {
    private final int target;
    private final int port;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private ServerSocket listening;

    public Relay(int target) throws IOException {
        this.target = target;
        this.listening = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        this.port = listening.getLocalPort();
        accept(listening);
    }

    public int port() {
        return port;
    }

    /** Refuses connections and breaks those that there are. */
    public void shut() throws IOException {
        listening.close();
        for (Socket socket : open) {
            socket.close();
        }
        open.clear();
    }

    public void openAgain() throws IOException {
        listening = new ServerSocket();
        listening.setReuseAddress(true);
        listening.bind(new java.net.InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        accept(listening);
    }

    private void accept(ServerSocket server) {
        start(() -> {
            while (!server.isClosed()) {
                Socket near = server.accept();
                Socket far = new Socket(InetAddress.getLoopbackAddress(), target);
                open.add(near);
                open.add(far);
                start(() -> pass(near, far));
                start(() -> pass(far, near));
            }
        });
    }

    private void pass(Socket from, Socket to) throws IOException {
        try (from;
                to) {
            from.getInputStream().transferTo(to.getOutputStream());
        } finally {
            open.remove(from);
            open.remove(to);
        }
    }

    private interface Work {
        void run() throws IOException;
    }

    private static void start(Work work) {
        Thread thread = new Thread(() -> {
            try {
                work.run();
            } catch (IOException e) {
                Thread.currentThread().interrupt(); // shut: the thread ends
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        shut();
    }
}
