package org.fumewarden.codes;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.apache.commons.lang3.StringUtils;

/** The name of a state of the rule base: a SHA-256 over the paths and bytes of its files. */
final class Revision {
    private Revision() {}

    /** The revision of the files that decide advice under one code: those of the given folders. */
    static String of(Map<String, byte[]> files, List<String> parts) {
        MessageDigest digest = sha256();
        files.forEach((name, bytes) -> {
            if (parts.contains(StringUtils.substringBefore(name, "/")) && !Tongue.holds(name)) {
                digest.update((name + "\n" + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
                digest.update(bytes);
            }
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    /** The SHA-256 of bytes in hexadecimal digits. */
    static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
