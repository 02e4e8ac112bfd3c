package org.fumewarden.model;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of bytes, as if all parts were one. */
public final class Sha256 {
    private Sha256() {}

    public static byte[] of(byte[]... parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                digest.update(part);
            }
            return digest.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** In hexadecimal digits. */
    public static String hex(byte[]... parts) {
        return HexFormat.of().formatHex(of(parts));
    }
}
