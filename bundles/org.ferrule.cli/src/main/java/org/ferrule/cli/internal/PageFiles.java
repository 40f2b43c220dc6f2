/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.engine.extension.Extensions;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.io.pdf.PdfWriter;
import org.ferrule.picture.Document;
import org.ferrule.picture.PictureExporter;

/** Writes pages to files: a PDF document holds all of them, other formats have a file for each. */
public final class PageFiles {
    private static final String PDF = ".pdf";

    private PageFiles() {
    }

    /** Writes pages in the format that the name asks for, and returns the files: {@code name-2.svg} is the second page. */
    public static List<Path> write(Document pages, Path output) {
        try {
            Files.createDirectories(output.toAbsolutePath().getParent());
            return output.getFileName().toString().endsWith(PDF) ? List.of(pdf(pages, output))
                    : pictures(pages, output);
        } catch (IOException e) {
            throw new CommandLineException(output + " cannot be written: " + e.getMessage());
        }
    }

    private static Path pdf(Document pages, Path output) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new PdfWriter().write(pages, bytes);
        AtomicFiles.write(output, bytes.toByteArray());
        return output;
    }

    private static List<Path> pictures(Document pages, Path output) throws IOException {
        String name = output.getFileName().toString();
        int dot = name.lastIndexOf('.');
        PictureExporter exporter = exporter(dot < 0 ? "" : name.substring(dot + 1), output);
        List<Path> written = new ArrayList<>();
        for (int i = 0; i < pages.pages().size(); i++) {
            String number = i == 0 ? "" : "-" + (i + 1);
            Path file = output.resolveSibling(name.substring(0, dot) + number + name.substring(dot));
            AtomicFiles.write(file, exporter.export(pages.pages().get(i), pages.info()));
            written.add(file);
        }
        return written;
    }

    private static PictureExporter exporter(String extension, Path output) {
        List<PictureExporter> known = Extensions.ofClassPath(PageFiles.class.getClassLoader()).pictureExporters();
        return known.stream().filter(exporter -> exporter.extension().equals(extension)).findFirst()
                .orElseThrow(() -> new CommandLineException("no format is known for " + output + "; known are "
                        + known.stream().map(e -> "." + e.extension()).collect(Collectors.joining(", "))));
    }
}
