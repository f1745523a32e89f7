package dev.injectorplanner.app.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The network between a phone and the server: an address of its own that can be cut and joined again. While it is cut nothing
 * listens there, for pages and workers alike, whatever the browser believes of its network.
 */
final class PhoneLine implements AutoCloseable {
    private final InetSocketAddress server;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private final int port;
    private ServerSocket listening;

    private PhoneLine(URI site, ServerSocket listening) {
        this.server = new InetSocketAddress(site.getHost(), site.getPort());
        this.listening = listening;
        this.port = listening.getLocalPort();
        accept(listening);
    }

    static PhoneLine to(URI site) {
        return new PhoneLine(site, listenAt(0));
    }

    private static ServerSocket listenAt(int port) {
        try {
            ServerSocket socket = new ServerSocket();
            socket.setReuseAddress(true);
            socket.bind(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), port));
            return socket;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String at(String path) {
        return "http://127.0.0.1:" + port + path;
    }

    void cut() {
        try {
            listening.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        open.forEach(PhoneLine::close);
        open.clear();
    }

    void join() {
        listening = listenAt(port);
        accept(listening);
    }

    private void accept(ServerSocket here) {
        start(() -> {
            while (!here.isClosed()) {
                try {
                    carry(here.accept());
                } catch (IOException e) {
                    return; // cut
                }
            }
        });
    }

    private void carry(Socket phone) throws IOException {
        Socket site = new Socket();
        open.add(phone);
        open.add(site);
        site.connect(server);
        start(() -> pass(phone, site));
        start(() -> pass(site, phone));
    }

    private static void pass(Socket from, Socket to) {
        try (InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream()) {
            in.transferTo(out);
        } catch (IOException e) {
            // one end hung up, or the line was cut
        } finally {
            close(from);
            close(to);
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "phone line");
        thread.setDaemon(true);
        thread.start();
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        cut();
    }
}
