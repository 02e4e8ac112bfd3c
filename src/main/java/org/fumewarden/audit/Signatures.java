package org.fumewarden.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;

/** Detached Ed25519 signatures with keys that the user holds as PEM files (PKCS #8 and X.509). */
public final class Signatures {
    private static final String ALGORITHM = "Ed25519";

    private Signatures() {}

    /** The place of the signature of a file. */
    public static Path beside(Path file) {
        return file.resolveSibling(file.getFileName() + ".sig");
    }

    /** Signs a file; the signature lies beside it, in Base64. */
    public static Path sign(Path file, Path privateKey) {
        try {
            PrivateKey key =
                    KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(der(privateKey)));
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initSign(key);
            signature.update(Files.readAllBytes(file));
            String text = Base64.getEncoder().encodeToString(signature.sign()) + "\n";
            return Files.writeString(beside(file), text, StandardCharsets.US_ASCII);
        } catch (GeneralSecurityException e) {
            throw unusable(privateKey, "a PKCS #8 Ed25519 key, as \"openssl genpkey -algorithm ed25519\" writes it.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** True when the signature beside the file fits the file and the key. */
    public static boolean verify(Path file, Path publicKey) {
        PublicKey key;
        try {
            key = KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(der(publicKey)));
        } catch (GeneralSecurityException e) {
            throw unusable(publicKey, "an Ed25519 public key, as \"openssl pkey -pubout\" writes it.");
        }
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initVerify(key);
            signature.update(YamlFiles.bytes(file, Long.MAX_VALUE));
            String text = YamlFiles.text(beside(file).toString(), YamlFiles.bytes(beside(file)));
            return signature.verify(Base64.getDecoder().decode(text.strip()));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return false;
        }
    }

    private static byte[] der(Path pem) {
        String text = YamlFiles.text(pem.toString(), YamlFiles.bytes(pem));
        String body = text.replaceAll("-----[A-Z ]+-----", "").replaceAll("\\s", "");
        try {
            return Base64.getDecoder().decode(body);
        } catch (IllegalArgumentException e) {
            throw unusable(pem, "a PEM file.");
        }
    }

    private static InputException unusable(Path key, String maybe) {
        return new InputException(new Problem(key.toString(), 0, "", "is no key that can be used here.", maybe));
    }
}
