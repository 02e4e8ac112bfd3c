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
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.model.Count;

/**
 * A list of the last hashes that a chain had, each line signed, meant to lie in another place than the chain. Who cuts the
 * end of a chain off, or grows another, cannot take back what the witness saw.
 */
public final class Witness {
    private final Path file;

    public Witness(Path file) {
        this.file = file;
    }

    /**
     * Makes sure, before anything is kept, that this list can take another line of this chain.
     *
     * @throws InputException when it lies with the chain, cannot be written, or is of another chain or key
     */
    public void admit(Path folder, PrivateKey key) {
        Path place = file.toAbsolutePath().normalize();
        if (Files.isDirectory(file) || !Files.isDirectory(place.getParent())) {
            throw refused("is no place for a file. Nothing is kept.", "make its folder first.");
        }
        if (real(place.getParent()).startsWith(real(folder.toAbsolutePath().normalize()))) {
            throw refused(
                    "lies inside the folder that it should bear witness of. Nothing is kept.",
                    "keep it in another place, best on another machine.");
        }
        if (!Files.exists(file)) {
            return;
        }
        List<String> lines =
                YamlFiles.text(file.toString(), YamlFiles.bytes(file)).lines().toList();
        List<KeptAdvice> entries = new Chain(folder).entries();
        if (!lines.isEmpty()) {
            fault(lines.get(lines.size() - 1), entries, Signatures.open(key)).ifPresent(f -> {
                throw refused(
                        "is the list of another chain or another key: its last line " + f + ". Nothing is kept.",
                        "name the list of this chain, or a new file.");
            });
        }
    }

    private static Path real(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            return folder;
        }
    }

    private InputException refused(String message, String maybe) {
        return new InputException(new Problem(file.toString(), 0, "", message, maybe));
    }

    /** The numbers of the entries that have no line here. */
    List<String> unseen(List<KeptAdvice> entries) {
        Set<String> seen = YamlFiles.text(file.toString(), YamlFiles.bytes(file))
                .lines()
                .map(line -> line.split(" ")[0])
                .collect(Collectors.toSet());
        return entries.stream()
                .map(e -> String.valueOf(e.sequence()))
                .filter(number -> !seen.contains(number))
                .toList();
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
            Optional<String> fault = fault(lines.get(i), entries, key);
            if (fault.isPresent()) {
                return Optional.of("line " + (i + 1) + " of the witness " + fault.get());
            }
        }
        return Optional.empty();
    }

    private static Optional<String> fault(String line, List<KeptAdvice> entries, PublicKey key) {
        String[] parts = line.split(" ");
        if (parts.length != 4
                || !parts[0].matches("[1-9][0-9]{0,8}")
                || !Signatures.fits(
                        (parts[0] + " " + parts[1] + " " + parts[2]).getBytes(StandardCharsets.UTF_8), parts[3], key)) {
            return Optional.of("is not signed by this key");
        }
        int number = Integer.parseInt(parts[0]);
        if (number > entries.size()) {
            return Optional.of("saw " + Count.of(number, "entry") + ", and only " + entries.size()
                    + (entries.size() == 1 ? " is" : " are") + " left: the end was cut off");
        }
        return entries.get(number - 1).hash().equals(parts[1])
                ? Optional.empty()
                : Optional.of("saw another entry " + number + ": the chain was written anew");
    }
}
