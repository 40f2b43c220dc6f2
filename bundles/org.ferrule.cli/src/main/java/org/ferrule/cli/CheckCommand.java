/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.DocumentFiles;
import org.ferrule.cli.internal.Problems;
import org.ferrule.cli.internal.ReferenceProblems;
import org.ferrule.io.json.DocumentProblem;
import org.ferrule.io.json.ReadResult;
import org.ferrule.model.check.Severity;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks documents. */
@Command(name = "check", mixinStandardHelpOptions = true, description = "Checks documents and tells every problem with its file, line and column.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Documents of any kind.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "Writes the problems as JSON.")
    private boolean json;

    private final DocumentFiles documents = new DocumentFiles();
    private final ArrayNode found = JsonNodeFactory.instance.arrayNode();
    private int problems;

    @Override
    public Integer call() {
        files.forEach(this::check);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(found.toPrettyString());
        } else {
            out.println(files.size() + (files.size() == 1 ? " document, " : " documents, ")
                    + (problems == 0 ? "no problems" : problems + (problems == 1 ? " problem" : " problems")));
        }
        return problems == 0 ? Main.FITS : Main.OTHER;
    }

    private void check(Path file) {
        ReadResult result = documents.read(file);
        result.problems().forEach(p -> report(file, p));
        if (!result.hasErrors()) {
            new ReferenceProblems(documents, spec.commandLine().getErr()).of(file, result.document().orElseThrow())
                    .forEach(found -> reportPlain(file, found));
        }
    }

    private void report(Path file, DocumentProblem problem) {
        if (problem.severity() != Severity.INFO) {
            problems++;
        }
        if (json) {
            found.addObject().put("file", file.toString()).put("line", problem.line()).put("column", problem.column())
                    .put("severity", problem.severity().name().toLowerCase(Locale.ROOT))
                    .put("code", problem.code()).put("message", problem.message()).put("expected", problem.expected());
        } else {
            spec.commandLine().getOut().println(Problems.line(file, problem));
        }
    }

    private void reportPlain(Path file, ReferenceProblems.Found problem) {
        problems++;
        String severity = problem.severity().name().toLowerCase(Locale.ROOT);
        if (json) {
            found.addObject().put("file", file.toString()).put("severity", severity).put("message", problem.message());
        } else {
            spec.commandLine().getOut().println(file + ": " + severity + ": " + problem.message());
        }
    }
}
