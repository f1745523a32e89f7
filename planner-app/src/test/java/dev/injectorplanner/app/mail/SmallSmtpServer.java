package dev.injectorplanner.app.mail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** Speaks just enough SMTP (RFC 5321) to give one chosen answer to RCPT. */
final class SmallSmtpServer implements AutoCloseable {
    private final ServerSocket socket = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
    private final String rcptAnswer;

    SmallSmtpServer(String rcptAnswer) throws IOException {
        this.rcptAnswer = rcptAnswer;
        Thread thread = new Thread(this::serve, "small smtp");
        thread.setDaemon(true);
        thread.start();
    }

    int port() {
        return socket.getLocalPort();
    }

    private void serve() {
        while (!socket.isClosed()) {
            try (Socket client = socket.accept()) {
                talk(client);
            } catch (IOException e) {
                return;
            }
        }
    }

    private void talk(Socket client) throws IOException {
        BufferedReader in =
                new BufferedReader(new InputStreamReader(client.getInputStream(), StandardCharsets.US_ASCII));
        OutputStream out = client.getOutputStream();
        say(out, "220 ready");
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            if (line.startsWith("RCPT")) {
                say(out, rcptAnswer);
            } else if (line.startsWith("QUIT")) {
                say(out, "221 bye");
                return;
            } else {
                say(out, "250 ok");
            }
        }
    }

    private static void say(OutputStream out, String line) throws IOException {
        out.write((line + "\r\n").getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
