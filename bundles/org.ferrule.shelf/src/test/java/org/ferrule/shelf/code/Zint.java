/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.imageio.ImageIO;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Reader;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.common.HybridBinarizer;

/** An encoder that has nothing to do with this project: the command line of zint. One process encodes many codes. */
final class Zint {
    private static final Pattern TEXT = Pattern.compile("<text[^>]*>\\s*(.*?)\\s*</text>", Pattern.DOTALL);

    private final Path folder;

    /** Works in a folder; the test is skipped where the encoder is not installed. */
    Zint(Path folder) {
        this.folder = folder;
        assumeTrue(isInstalled(),
                "zint is not installed (Debian: apt-get install zint): codes of an independent encoder"
                        + " are not read");
    }

    private boolean isInstalled() {
        try {
            return run(List.of("zint", "--version")) == 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** Returns the texts that are printed under linear symbols. */
    List<String> printed(List<String> codes, String... options) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : encode(codes, "svg", options)) {
            Matcher text = TEXT.matcher(Files.readString(file));
            texts.add(text.find() ? unescaped(text.group(1)) : "");
        }
        return texts;
    }

    /** Returns what a reader of images decodes. */
    List<String> scanned(List<String> codes, Reader reader, Map<DecodeHintType, ?> hints, String... options)
            throws IOException, ReaderException {
        List<String> texts = new ArrayList<>();
        for (Path file : encode(codes, "png", options)) {
            texts.add(asTyped(reader.decode(bitmap(ImageIO.read(file.toFile())), hints)));
        }
        return texts;
    }

    /** Returns the numbers of the codes, from 0, that the encoder finds fault with. */
    List<Integer> refused(List<String> codes, String... options) throws IOException {
        encodeAll(codes, "svg", options);
        return Files.readAllLines(folder.resolve("log")).stream()
                .map(line -> line.replaceFirst(".*line (\\d+):.*", "$1"))
                .map(line -> Integer.parseInt(line) - 1).toList();
    }

    private List<Path> encode(List<String> codes, String type, String... options) throws IOException {
        encodeAll(codes, type, options);
        String errors = Files.readString(folder.resolve("log"));
        if (!errors.isEmpty()) {
            throw new IOException(errors);
        }
        List<Path> files = new ArrayList<>();
        for (int i = 1; i <= codes.size(); i++) {
            files.add(folder.resolve(String.format("%04d.%s", i, type)));
        }
        return files;
    }

    /** What goes wrong with single lines stands in the log; the exit status tells nothing of it. */
    private void encodeAll(List<String> codes, String type, String... options) throws IOException {
        Files.write(folder.resolve("codes"), codes, StandardCharsets.ISO_8859_1);
        List<String> command = new ArrayList<>(List.of("zint", "--batch", "--werror", "-i", "codes", "-o",
                "~~~~." + type));
        command.addAll(List.of(options));
        run(command);
    }

    private int run(List<String> command) throws IOException {
        Process process = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile()).start();
        try {
            if (!process.waitFor(30, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IOException("no end: " + command);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
        return process.exitValue();
    }

    /** A scanner that types sends the symbology identifier first. */
    private static String asTyped(Result result) {
        Object symbology = result.getResultMetadata().get(ResultMetadataType.SYMBOLOGY_IDENTIFIER);
        return result.getText().startsWith("]") ? result.getText() : symbology + result.getText();
    }

    private static BinaryBitmap bitmap(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
        return new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
    }

    private static String unescaped(String xml) {
        return xml.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&apos;", "'")
                .replace("&amp;", "&");
    }
}
