package org.fumewarden.codes;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Spoils the bytes of good files, a little or a lot; the same seed gives the same file. */
public final class Mutator {
    private static final List<String> TOKENS = List.of(
            "{",
            "}",
            "[",
            "]",
            "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[",
            ":",
            ": ",
            "\n",
            "\n  ",
            "\n- ",
            "- ",
            "#",
            "'",
            "\"",
            "\\",
            "&a ",
            "*a",
            "!!java.lang.Object ",
            "!!set {",
            "<<: *a",
            "? ",
            "|",
            ">",
            "%",
            "@",
            "`",
            "~",
            "null",
            "true",
            "no",
            "unknown",
            "-1",
            "0",
            "-0",
            "1e99999",
            "1e-99999",
            "NaN",
            ".inf",
            "0x1F",
            "9999999999999999999999",
            "1_000",
            "1,5",
            "12:30:45",
            "2026-02-30",
            "9999-12-31",
            "-9999-01-01",
            "PT",
            "PT-1H",
            "PT99999999999999999H",
            " mg/m3",
            " ppm",
            " %",
            "\u0000",
            "\u001b[31m",
            "\uFEFF",
            "\u2028",
            "\uD800",
            "\u00b5",
            "\ud83d\ude00",
            "\t",
            "\r",
            "---\n",
            "...\n",
            "extends: x.yaml\n",
            "rows:\n",
            "expect:\n");

    private final List<byte[]> corpus;

    public Mutator(List<byte[]> corpus) {
        this.corpus = List.copyOf(corpus);
    }

    /** One file of the corpus, spoilt in one to six places. */
    public byte[] spoilt(long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        byte[] bytes = corpus.get(random.nextInt(corpus.size()));
        int places = 1 + random.nextInt(6);
        for (int i = 0; i < places; i++) {
            bytes = spoil(bytes, random);
        }
        return bytes;
    }

    private byte[] spoil(byte[] bytes, Random random) {
        if (bytes.length == 0) {
            return corpus.get(random.nextInt(corpus.size()));
        }
        int at = random.nextInt(bytes.length);
        int end = Math.min(bytes.length, at + 1 + random.nextInt(40));
        byte[] none = {};
        return switch (random.nextInt(9)) {
            case 0 -> put(bytes, at, at + 1, new byte[] {(byte) random.nextInt(256)});
            case 1 -> put(bytes, at, end, none);
            case 2 -> put(bytes, at, at, Arrays.copyOfRange(bytes, at, end));
            case 3 -> put(bytes, at, bytes.length, none);
            case 4 -> put(bytes, at, end, token(random));
            case 5 -> line(bytes, at, random);
            case 6 -> digit(bytes, at, random);
            case 7 -> {
                byte[] other = corpus.get(random.nextInt(corpus.size()));
                int from = random.nextInt(Math.max(1, other.length));
                yield put(bytes, at, end, Arrays.copyOfRange(other, from, Math.min(other.length, from + 60)));
            }
            default -> put(bytes, at, at, token(random));
        };
    }

    private static byte[] token(Random random) {
        String token = TOKENS.get(random.nextInt(TOKENS.size()));
        return (random.nextInt(40) == 0 ? token.repeat(5_000) : token).getBytes(StandardCharsets.UTF_8);
    }

    /** Drops the line, doubles it, or gives it a wrong indent. */
    private static byte[] line(byte[] bytes, int at, Random random) {
        int start = at;
        while (start > 0 && bytes[start - 1] != '\n') {
            start--;
        }
        int end = at;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        int next = Math.min(bytes.length, end + 1);
        return switch (random.nextInt(3)) {
            case 0 -> put(bytes, start, next, new byte[] {});
            case 1 -> put(bytes, next, next, Arrays.copyOfRange(bytes, start, next));
            default -> put(bytes, start, start, "   ".getBytes(StandardCharsets.UTF_8));
        };
    }

    /** Changes the next number after a place. */
    private static byte[] digit(byte[] bytes, int at, Random random) {
        for (int i = at; i < bytes.length; i++) {
            if (bytes[i] >= '0' && bytes[i] <= '9') {
                return put(bytes, i, i + 1, token(random));
            }
        }
        return put(bytes, at, at + 1, new byte[] {'7'});
    }

    private static byte[] put(byte[] bytes, int from, int to, byte[] middle) {
        byte[] made = new byte[from + middle.length + bytes.length - to];
        System.arraycopy(bytes, 0, made, 0, from);
        System.arraycopy(middle, 0, made, from, middle.length);
        System.arraycopy(bytes, to, made, from + middle.length, bytes.length - to);
        return made;
    }
}
