package leadlamp.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/** A Chromium without a window and one page in it, steered through its own protocol for developers' tools. */
final class Browser implements AutoCloseable {
    private static final List<Path> PLACES = List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"));
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int PATIENCE_SECONDS = 60;

    private final Process process;
    private final Path profile;
    private final WebSocket socket;
    private final Map<Integer, CompletableFuture<JsonNode>> asked = new ConcurrentHashMap<>();
    private final Map<String, CompletableFuture<JsonNode>> awaited = new ConcurrentHashMap<>();
    private final List<String> complaints = Collections.synchronizedList(new ArrayList<>());
    private String session = "";
    private int number;

    private Browser(Process process, Path profile, String address) throws IOException {
        this.process = process;
        this.profile = profile;
        this.socket = HttpClient.newHttpClient().newWebSocketBuilder().buildAsync(URI.create(address), new Ear()).join();
        String target = ask("Target.createTarget", Map.of("url", "about:blank")).get("targetId").asText();
        session = ask("Target.attachToTarget", Map.of("targetId", target, "flatten", true)).get("sessionId").asText();
        for (String domain : List.of("Page", "Runtime", "Log")) {
            ask(domain + ".enable", Map.of());
        }
    }

    /** Whether there is one on this machine. */
    static boolean there() {
        return PLACES.stream().anyMatch(Files::isExecutable);
    }

    static Browser start() throws IOException {
        Path profile = Files.createTempDirectory("leadlamp-browser");
        Process process = new ProcessBuilder(PLACES.stream().filter(Files::isExecutable).findFirst().orElseThrow().toString(),
                "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync", "--mute-audio",
                "--hide-scrollbars", "--remote-debugging-port=0", "--user-data-dir=" + profile, "about:blank")
                .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        Path port = profile.resolve("DevToolsActivePort");
        for (int i = 0; i < PATIENCE_SECONDS * 20; i++) {
            if (Files.exists(port) && Files.readAllLines(port).size() > 1) {
                List<String> lines = Files.readAllLines(port);
                return new Browser(process, profile, "ws://127.0.0.1:" + lines.get(0) + lines.get(1));
            }
            pause();
        }
        process.destroyForcibly();
        throw new IOException("Chromium did not start within " + PATIENCE_SECONDS + " seconds.");
    }

    private static void pause() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** How wide and high the window is, in CSS pixels; the light or the dark look; `screen` or `print`. */
    void look(int width, int height, String scheme, String media) throws IOException {
        ask("Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        ask("Emulation.setEmulatedMedia", Map.of("media", media, "features",
                List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** Opens a page and waits until it is there. */
    void open(Path page) throws IOException {
        complaints.clear();
        CompletableFuture<JsonNode> loaded = new CompletableFuture<>();
        awaited.put("Page.loadEventFired", loaded);
        ask("Page.navigate", Map.of("url", page.toAbsolutePath().toUri().toString()));
        wait(loaded, "the page to load");
    }

    /** What the page complained of since it was opened. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** What an expression of the page's own language gives; a promise is waited for. */
    JsonNode eval(String expression) throws IOException {
        JsonNode answer = ask("Runtime.evaluate",
                Map.of("expression", expression, "returnByValue", true, "awaitPromise", true));
        if (answer.has("exceptionDetails")) {
            throw new IOException(answer.get("exceptionDetails").toString());
        }
        return answer.get("result").path("value");
    }

    /** Presses a key, as `Tab`, holds it until it has come so many times, and lets go. */
    void press(String key, int code, String text, int times) throws IOException {
        ObjectNode down = JSON.createObjectNode().put("type", text.isEmpty() ? "rawKeyDown" : "keyDown").put("key", key).put("code", key)
                .put("windowsVirtualKeyCode", code);
        if (!text.isEmpty()) {
            down.put("text", text);
        }
        ObjectNode up = JSON.createObjectNode().put("type", "keyUp").put("key", key).put("code", key).put("windowsVirtualKeyCode", code);
        List<CompletableFuture<JsonNode>> answers = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            answers.add(say("Input.dispatchKeyEvent", down));
        }
        answers.add(say("Input.dispatchKeyEvent", up));
        for (CompletableFuture<JsonNode> answer : answers) {
            hear(answer, "a key");
        }
    }

    /** The page as it is printed on A4. */
    byte[] print() throws IOException {
        return Base64.getDecoder().decode(ask("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground",
                false)).get("data").asText());
    }

    private JsonNode ask(String method, Object parameters) throws IOException {
        return hear(say(method, parameters), method);
    }

    private CompletableFuture<JsonNode> say(String method, Object parameters) {
        int id = ++number;
        ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
        message.set("params", JSON.valueToTree(parameters));
        if (!session.isEmpty()) {
            message.put("sessionId", session);
        }
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        asked.put(id, answer);
        socket.sendText(message.toString(), true).join();
        return answer;
    }

    private static JsonNode hear(CompletableFuture<JsonNode> answer, String method) throws IOException {
        JsonNode got = wait(answer, method);
        if (got.has("error")) {
            throw new IOException(method + ": " + got.get("error"));
        }
        return got.get("result");
    }

    private static JsonNode wait(CompletableFuture<JsonNode> answer, String what) throws IOException {
        try {
            return answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException e) {
            throw new IOException("Waited in vain for " + what + ".", e);
        }
    }

    /** What the browser says. */
    private final class Ear implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                String whole = text.toString();
                text.setLength(0);
                try {
                    hear(JSON.readTree(whole));
                } catch (IOException broken) {
                    complaints.add("unreadable: " + whole);
                }
            }
            from.request(1);
            return null;
        }

        private void hear(JsonNode message) {
            if (message.has("id")) {
                asked.remove(message.get("id").asInt()).complete(message);
                return;
            }
            String method = message.get("method").asText();
            JsonNode says = message.get("params");
            switch (method) {
                case "Runtime.exceptionThrown" -> complaints.add(says.get("exceptionDetails").toString());
                case "Runtime.consoleAPICalled" -> complaints.add(says.get("args").toString());
                case "Log.entryAdded" -> complaints.add(says.get("entry").get("text").asText());
                default -> {
                    CompletableFuture<JsonNode> waiting = awaited.remove(method);
                    if (waiting != null) {
                        waiting.complete(says);
                    }
                }
            }
        }
    }

    /** The script that looks for what keeps a reader out. */
    static String axe() throws IOException {
        try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            session = "";
            ask("Browser.close", Map.of());
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
            remove(profile);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                file.toFile().delete();
            }
        }
    }
}
