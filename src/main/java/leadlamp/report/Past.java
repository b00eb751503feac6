package leadlamp.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An earlier JSON answer, as far as a later one is held against it. */
public final class Past {
    /**
     * One answer of it.
     *
     * @param risk     its level; empty where it has none
     * @param accepted whether the builder lived with it
     * @param later    whether it was not due
     */
    record Answer(String check, String of, String at, String outcome, String risk, boolean accepted, boolean later) {
    }

    private String file = "";
    private String bytes = "";
    private String engine = "";
    private final Map<String, Answer> answers = new LinkedHashMap<>();

    private Past() {
    }

    /**
     * Reads one answer, or a list of them.
     *
     * @throws IllegalArgumentException if it is no JSON answer of Leadlamp, with the reason as one sentence
     */
    public static List<Past> read(InputStream in) throws IOException {
        List<Past> all = new ArrayList<>();
        try (JsonParser json = new JsonFactory().createParser(in)) {
            JsonToken first = json.nextToken();
            if (first == JsonToken.START_ARRAY) {
                while (json.nextToken() == JsonToken.START_OBJECT) {
                    all.add(one(json));
                }
            } else if (first == JsonToken.START_OBJECT) {
                all.add(one(json));
            }
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException("It is no JSON (line " + broken.getLocation().getLineNr() + ").", broken);
        }
        if (all.isEmpty()) {
            throw new IllegalArgumentException("It is no answer of an audit.");
        }
        return List.copyOf(all);
    }

    /** The record that it was given to, as it named it. */
    public String file() {
        return file;
    }

    /** The engine of that record. */
    public String engine() {
        return engine;
    }

    String bytes() {
        return bytes;
    }

    Map<String, Answer> answers() {
        return answers;
    }

    private static Past one(JsonParser json) throws IOException {
        Past past = new Past();
        boolean answered = false;
        int form = 0;
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            JsonToken value = json.nextToken();
            if (name.equals("form") && value == JsonToken.VALUE_NUMBER_INT) {
                form = json.getIntValue();
            } else if (name.equals("record") && value == JsonToken.START_OBJECT) {
                past.record(json);
            } else if (name.equals("answers") && value == JsonToken.START_ARRAY) {
                answered = true;
                while (json.nextToken() == JsonToken.START_OBJECT) {
                    Answer answer = answer(json);
                    past.answers.put(ReportModel.Since.key(answer.check(), answer.of(), answer.at()), answer);
                }
            } else {
                json.skipChildren();
            }
        }
        if (!answered || form == 0) {
            throw new IllegalArgumentException("It is no answer of an audit.");
        }
        if (form > JsonWriter.FORM) {
            throw new IllegalArgumentException("It is of form " + form + ", and this Leadlamp knows forms up to " + JsonWriter.FORM + ".");
        }
        return past;
    }

    private void record(JsonParser json) throws IOException {
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            json.nextToken();
            switch (name) {
                case "file" -> file = json.getValueAsString("");
                case "sha256" -> bytes = json.getValueAsString("");
                case "engine" -> engine = json.getValueAsString("");
                default -> json.skipChildren();
            }
        }
    }

    private static Answer answer(JsonParser json) throws IOException {
        String check = "";
        String of = "";
        String at = "";
        String outcome = "";
        String risk = "";
        boolean accepted = false;
        boolean later = false;
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            json.nextToken();
            switch (name) {
                case "check" -> check = json.getValueAsString("");
                case "of" -> of = json.getValueAsString("");
                case "at" -> at = json.getValueAsString("");
                case "outcome" -> outcome = json.getValueAsString("");
                case "risk" -> risk = json.getValueAsString("");
                case "dueLater" -> later = json.getValueAsBoolean();
                case "accepted" -> {
                    accepted = true;
                    json.skipChildren();
                }
                default -> json.skipChildren();
            }
        }
        return new Answer(check, of, at, outcome, risk, accepted, later);
    }
}
