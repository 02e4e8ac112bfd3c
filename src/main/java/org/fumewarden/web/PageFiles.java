package org.fumewarden.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.codes.ProgramFile;

/** The files of the page, all named here and read once: a path that is not in the list leads nowhere. */
final class PageFiles {
    private static final List<String> NAMES = List.of(
            "index.html",
            "look.css",
            "print.css",
            "mark.svg",
            "main.js",
            "server.js",
            "words.js",
            "dom.js",
            "state.js",
            "tasks.js",
            "undo.js",
            "units.js",
            "faults.js",
            "picker.js",
            "field.js",
            "exposures.js",
            "measured.js",
            "steps.js",
            "title.js",
            "together.js",
            "head.js",
            "judged.js",
            "begin.js",
            "describe.js",
            "answer.js",
            "plate.js",
            "paper.js",
            "advice.js",
            "plots.js",
            "ruler.js",
            "open.js",
            "whatif.js",
            "moved.js",
            "levers.js",
            "range.js",
            "trail.js",
            "kept.js",
            "upkeep.js",
            "item.js",
            "acts.js",
            "check.js",
            "entry.js",
            "register.js",
            "due.js",
            "drill.js",
            "room.js",
            "training.css");

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml");

    private final Map<String, Reply> replies = new LinkedHashMap<>();

    PageFiles() {
        for (String name : NAMES) {
            String ending = name.substring(name.lastIndexOf('.') + 1);
            replies.put("/" + name, Reply.of(TYPES.get(ending), bytes(name)));
        }
        replies.put("/", replies.get("/index.html"));
    }

    Optional<Reply> find(String path) {
        return Optional.ofNullable(replies.get(path));
    }

    static byte[] bytes(String name) {
        return ProgramFile.bytes(PageFiles.class, name);
    }
}
