/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.PlanProblem;
import org.ferrule.engine.plan.ShelfTranslator;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Document;
import org.ferrule.model.FitChart;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.check.Severity;

/** What is wrong about documents that only the documents to which they refer can tell. */
public final class ReferenceProblems {
    private final DocumentFiles documents;
    private final PrintWriter err;

    /** Reads further documents with these, and shows progress there. */
    public ReferenceProblems(DocumentFiles documents, PrintWriter err) {
        this.documents = documents;
        this.err = err;
    }

    /**
     * What is wrong.
     *
     * @param severity how grave it is
     * @param message in words
     */
    public record Found(Severity severity, String message) {
    }

    /** The problems of a document. */
    public List<Found> of(Path file, Document document) {
        try {
            return document instanceof FitChart ? ofChart(ChartRun.of(file, err)) : errors(others(file, document));
        } catch (CommandLineException | RuleSetException e) {
            return errors(List.of(e.getMessage()));
        }
    }

    private static List<Found> errors(List<String> messages) {
        return messages.stream().map(message -> new Found(Severity.ERROR, message)).toList();
    }

    private static List<Found> ofChart(ChartRun run) {
        List<Found> found = new ArrayList<>(
                errors(run.problems().stream().map(p -> p.place() + ": " + p.message()).toList()));
        run.signedOff().filter(signed -> !signed.upToDate())
                .ifPresent(signed -> found.add(new Found(Severity.WARNING, signed.head())));
        return found;
    }

    private List<String> others(Path file, Document document) {
        if (document instanceof CaseDocument) {
            return words(documents.caseFile(file)
                    .assemble(Extensions.ofClassPath(ReferenceProblems.class.getClassLoader()).checks(),
                            LocalDate.now())
                    .problems());
        }
        return document instanceof ShelfDocument shelf ? words(ShelfTranslator
                .translate(shelf, Catalogue.of(documents.libraries(file, shelf.getLibraries()))).problems())
                : List.of();
    }

    private static List<String> words(List<PlanProblem> problems) {
        return problems.stream().map(ReferenceProblems::line).toList();
    }

    /** One problem with its place in the document that it is about. */
    static String line(PlanProblem p) {
        return p.document().format() + " " + p.path() + (p.feature().isEmpty() || p.path().isEmpty() ? "" : " ")
                + p.feature() + ": " + p.message();
    }
}
