package org.fumewarden.codes;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Sha256;

/** The name of a state of the rule base: a SHA-256 over the paths and bytes of its files. */
final class Revision {
    private Revision() {}

    /** The revision of the files that decide advice under one code: those of the given folders. */
    static String of(Map<String, byte[]> files, List<String> folders) {
        List<byte[]> parts = new ArrayList<>();
        files.forEach((name, bytes) -> {
            if (folders.contains(StringUtils.substringBefore(name, "/")) && !Tongue.holds(name)) {
                parts.add((name + "\n" + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
                parts.add(bytes);
            }
        });
        return Sha256.hex(parts.toArray(byte[][]::new));
    }
}
