package org.fumewarden.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;

/**
 * A list of the last hashes that a chain had, each line signed, meant to lie in another place than the chain. Who cuts the
 * end of a chain off, or grows another, cannot take back what the witness saw.
 */
public final class Witness {
    private final Path file;

    public Witness(Path file) {
        this.file = file;
    }

    /** Adds the end that a chain has now. */
    public void saw(KeptAdvice last, PrivateKey key) {
        String line = last.sequence() + " " + last.hash() + " "
                + last.keptAt().map(String::valueOf).orElse("-");
        String signed = line + " " + Signatures.sign(line.getBytes(StandardCharsets.UTF_8), key) + "\n";
        try {
            Files.writeString(file, signed, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The first thing that this witness says against a chain, in words. */
    public Optional<String> against(List<KeptAdvice> entries, PublicKey key) {
        List<String> lines =
                YamlFiles.text(file.toString(), YamlFiles.bytes(file)).lines().toList();
        if (lines.isEmpty()) {
            throw new InputException(new Problem(
                    file.toString(), 0, "", "holds no lines.", "the file that --witness of advise or review wrote."));
        }
        for (int i = 0; i < lines.size(); i++) {
            String[] parts = lines.get(i).split(" ");
            String place = "line " + (i + 1) + " of the witness";
            if (parts.length != 4
                    || !parts[0].matches("[1-9][0-9]{0,8}")
                    || !Signatures.fits(
                            (parts[0] + " " + parts[1] + " " + parts[2]).getBytes(StandardCharsets.UTF_8),
                            parts[3],
                            key)) {
                return Optional.of(place + " is not signed by this key");
            }
            int number = Integer.parseInt(parts[0]);
            if (number > entries.size()) {
                return Optional.of(place + " saw " + number + " entries, and " + entries.size()
                        + " are left: the end was cut off");
            }
            if (!entries.get(number - 1).hash().equals(parts[1])) {
                return Optional.of(place + " saw another entry " + number + ": the chain was written anew");
            }
        }
        return Optional.empty();
    }
}
