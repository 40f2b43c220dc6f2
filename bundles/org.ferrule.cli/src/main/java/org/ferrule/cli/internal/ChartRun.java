/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.chart.export.ChartExporter;
import org.ferrule.chart.export.ExportedFile;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.SignedOff;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.ChartProblem;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.content.ChartContents;
import org.ferrule.engine.document.DocumentHashes;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.signoff.SignOffComparison;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.engine.signoff.SignOffWords;
import org.ferrule.engine.signoff.SignedVerdicts;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.io.csv.CsvChartExporter;
import org.ferrule.io.csv.CsvLayout;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.model.FileReferences;
import org.ferrule.model.FitChart;

/** Reads, solves and exports one chart. */
public final class ChartRun {
    private final List<ChartExporter> exporters;
    private final SolvedChart solved;
    private final ChartContent content;
    private final Optional<SignOffState> signed;

    private ChartRun(List<ChartExporter> exporters, SolvedChart solved, ChartContent content,
            Optional<SignOffState> signed) {
        this.signed = signed;
        this.exporters = exporters;
        this.solved = solved;
        this.content = content;
    }

    /** Reads and solves a chart. */
    public static ChartRun of(Path file, PrintWriter err) {
        Extensions extensions = Extensions.ofClassPath(ChartRun.class.getClassLoader());
        OpenChart open = new DocumentFiles().chart(file);
        try {
            SolvedChart solved = open.solve(extensions.checks(),
                    new TerminalProgress(err, "solving " + file.getFileName()));
            Optional<SignOffState> signed = signed(file, open.chart(), solved);
            ChartContent content = ChartContents.of(open.chart(), solved, open.rules(),
                    open.libraries().stream().map(LibraryReader::library).toList(), LocalDate.now(), signed);
            return new ChartRun(extensions.exporters(), solved, content, signed);
        } catch (RuleSetException e) {
            throw new CommandLineException(file + ": " + e.getMessage());
        }
    }

    private static Optional<SignOffState> signed(Path file, FitChart chart, SolvedChart solved) {
        return SignedVerdicts.of(chart)
                .map(signed -> new SignOffComparison(signed, solved, hashes(file, chart)).compare());
    }

    private static Map<String, String> hashes(Path file, FitChart chart) {
        Map<String, String> hashes = new HashMap<>();
        try {
            for (String path : FileReferences.of(chart)) {
                hashes.put(path, DocumentHashes.sha256(Files.readAllBytes(file.resolveSibling(path))));
            }
            return hashes;
        } catch (IOException e) {
            throw new CommandLineException("a document of " + file + " cannot be read: " + e.getMessage());
        }
    }

    /** How the chart stands to its sign-off; nothing where it has none. */
    public Optional<SignedOff> signedOff() {
        return signed.map(new SignOffWords()::inWords);
    }

    public SolvedChart solved() {
        return solved;
    }

    public ChartContent content() {
        return content;
    }

    /** What could not be asked as the chart is written. */
    public List<ChartProblem> problems() {
        return solved.chart().problems();
    }

    /** Writes the chart in the format that the file's name asks for, and returns the files written. */
    public List<Path> export(Path output) {
        return export(output, CsvLayout.PAIRS);
    }

    /** Writes the chart in the format that the file's name asks for, comma-separated values in that layout. */
    public List<Path> export(Path output, CsvLayout layout) {
        String name = output.getFileName().toString();
        int dot = name.lastIndexOf('.');
        ChartExporter known = exporter(dot < 0 ? "" : name.substring(dot + 1), output);
        ChartExporter exporter = known instanceof CsvChartExporter ? new CsvChartExporter(layout) : known;
        try {
            Path folder = output.toAbsolutePath().getParent();
            Files.createDirectories(folder);
            List<Path> written = new ArrayList<>();
            for (ExportedFile file : exporter.export(content, name.substring(0, dot), OffsetDateTime.now())) {
                AtomicFiles.write(folder.resolve(file.name()), file.bytes());
                written.add(output.resolveSibling(file.name()));
            }
            return written;
        } catch (IOException e) {
            throw new CommandLineException(output + " cannot be written: " + e.getMessage());
        }
    }

    private ChartExporter exporter(String extension, Path output) {
        return exporters.stream().filter(e -> e.extension().equals(extension)).findFirst()
                .orElseThrow(() -> new CommandLineException("no format is known for " + output + "; known are "
                        + exporters.stream().map(e -> "." + e.extension()).collect(Collectors.joining(", "))));
    }

    /** The extensions of all formats. */
    public List<String> formats() {
        return exporters.stream().map(ChartExporter::extension).toList();
    }
}
