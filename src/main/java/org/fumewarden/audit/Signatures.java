package org.fumewarden.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.interfaces.EdECPrivateKey;
import java.security.spec.NamedParameterSpec;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.model.Sha256;

/** Detached Ed25519 signatures with keys that the user holds as PEM files (PKCS #8 and X.509). */
public final class Signatures {
    private static final String ALGORITHM = "Ed25519";
    private static final int FINGERPRINT = 16;

    private Signatures() {}

    /** The place of the signature of a file. */
    public static Path beside(Path file) {
        return file.resolveSibling(file.getFileName() + ".sig");
    }

    /** A key that signs, read before anything is kept. */
    public static PrivateKey secret(Path privateKey) {
        try {
            return KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(der(privateKey)));
        } catch (GeneralSecurityException e) {
            throw unusable(privateKey, "a PKCS #8 Ed25519 key, as \"openssl genpkey -algorithm ed25519\" writes it.");
        }
    }

    /** The signature of some bytes, in Base64. */
    static String sign(byte[] bytes, PrivateKey key) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initSign(key);
            signature.update(bytes);
            return Base64.getEncoder().encodeToString(signature.sign());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Signs a file; the signature lies beside it, in Base64. */
    public static Path sign(Path file, Path privateKey) {
        return sign(file, YamlFiles.bytes(file, Long.MAX_VALUE), secret(privateKey));
    }

    static Path sign(Path file, byte[] bytes, PrivateKey key) {
        try {
            return Files.writeString(beside(file), sign(bytes, key) + "\n", StandardCharsets.US_ASCII);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A key that checks signatures. */
    public static PublicKey open(Path publicKey) {
        try {
            return KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(der(publicKey)));
        } catch (GeneralSecurityException e) {
            throw unusable(publicKey, "an Ed25519 public key, as \"openssl pkey -pubout\" writes it.");
        }
    }

    /** The key that checks what a key signs. */
    public static PublicKey open(PrivateKey secret) {
        byte[] seed = ((EdECPrivateKey) secret).getBytes().orElseThrow();
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance(ALGORITHM);
            generator.initialize(NamedParameterSpec.ED25519, new Seed(seed));
            return generator.generateKeyPair().getPublic();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The generator of the JDK takes a private key from its source of chance; this one gives it the key that is there. */
    private static final class Seed extends SecureRandom {
        private static final long serialVersionUID = 1;
        private final byte[] seed;

        Seed(byte[] seed) {
            this.seed = seed;
        }

        @Override
        public void nextBytes(byte[] bytes) {
            System.arraycopy(seed, 0, bytes, 0, bytes.length);
        }
    }

    /** A short name of a key: the first 16 figures of the SHA-256 over its X.509 form. */
    public static String fingerprint(PublicKey key) {
        return Sha256.hex(key.getEncoded()).substring(0, FINGERPRINT);
    }

    /** What is wrong with the signature beside a file, in words; empty when it fits the file and the key. */
    public static Optional<String> fault(Path file, PublicKey key) {
        if (!Files.isRegularFile(beside(file))) {
            return Optional.of("it has no signature");
        }
        String text = new String(YamlFiles.bytes(beside(file)), StandardCharsets.ISO_8859_1).strip();
        return fits(YamlFiles.bytes(file, Long.MAX_VALUE), text, key)
                ? Optional.empty()
                : Optional.of("its signature does not fit this key, or the file was changed after signing");
    }

    /** True when a signature in Base64 fits some bytes and a key. */
    static boolean fits(byte[] bytes, String signature, PublicKey key) {
        try {
            Signature check = Signature.getInstance(ALGORITHM);
            check.initVerify(key);
            check.update(bytes);
            return check.verify(Base64.getDecoder().decode(signature));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return false;
        }
    }

    /** True when the signature beside the file fits the file and the key. */
    public static boolean verify(Path file, Path publicKey) {
        return fault(file, open(publicKey)).isEmpty();
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
