package org.fumewarden.audit;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;

/** The rules that decided kept advice, in one archive for each revision beside the chain. */
final class KeptRules {
    private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final long LARGEST = 20_000_000;
    private static final int MOST_FILES = 2_000;

    private KeptRules() {}

    /** Where the rules of a revision lie beside a chain. */
    static Path of(Path chain, String revision) {
        return chain.resolve("rules").resolve(revision + ".zip");
    }

    /** The files of some folders of a rule base, and all that decides beside them, as one archive, always with the same bytes. */
    static byte[] archive(RuleFolder rules, List<String> folders) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : rules.kept(folders).entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(ALWAYS);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /**
     * Reads an archive. Nothing in it is run.
     *
     * @throws InputException when it is no archive of rules, or not of the revision of the advice
     */
    static RuleFolder read(Path archive, KeptAdvice kept) {
        Map<String, byte[]> files = new TreeMap<>();
        long total = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(YamlFiles.bytes(archive, LARGEST)))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                byte[] bytes = zip.readNBytes((int) (LARGEST - total) + 1);
                total += bytes.length;
                if (total > LARGEST || files.size() > MOST_FILES) {
                    throw damaged(archive, "is larger than any archive of rules.");
                }
                if (entry.getName()
                        .matches("[+]?[a-z0-9_-]+(/[a-z0-9_-]+)*\\.(yaml|drl)|[+]beside/typed-apart\\.csv")) {
                    files.put(entry.getName(), bytes);
                } else {
                    throw damaged(archive, "holds \"" + entry.getName() + "\", which is no file of rules.");
                }
            }
        } catch (IOException e) {
            throw damaged(archive, "is no archive that can be read.");
        }
        RuleFolder rules =
                RuleFolder.ofKept(archive.toString(), files, kept.foreignRules().isPresent());
        if (!CodeBook.read(rules, kept.code()).revision().equals(kept.revision())) {
            throw new InputException(new Problem(
                    archive.toString(),
                    0,
                    "",
                    "does not hold the files that its revision names: one is missing or is another.",
                    "it may have been kept by an earlier program without the affirmations.yaml that lay beside the rules:"
                            + " add --rules and that folder of rules; else take the archive from a copy."));
        }
        return rules;
    }

    static boolean there(Path chain, String revision) {
        return revision.matches("[0-9a-f]{64}") && Files.isRegularFile(of(chain, revision));
    }

    private static InputException damaged(Path archive, String message) {
        return new InputException(new Problem(
                archive.toString(), 0, "", message, "take it from a copy, and find out how it came to differ."));
    }
}
