/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.signoff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.ferrule.engine.document.DocumentHashes;
import org.ferrule.engine.signoff.SigningOff;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.FileReferences;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.RuleSet;
import org.ferrule.model.SignOff;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.chart.LiveAnswers;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemBoard;

/** Signs a chart off by a command that can be undone, or says why that cannot be done now. */
final class SignOffAct {

    private static final String OF_SIGN_OFF = "signOff";

    private final ProblemBoard board = Services.get(ProblemBoard.class);
    private final DocumentSession session;
    private final LiveAnswers answers;

    SignOffAct(DocumentSession session, LiveAnswers answers) {
        this.session = session;
        this.answers = answers;
    }

    /** Says why the chart cannot be signed off now; nothing when it can. */
    Optional<String> hindrance(String by) {
        if (!session.editable()) {
            return Optional.of("The chart cannot be changed.");
        }
        if (by.isBlank()) {
            return Optional.of("Name who signs off: name or initials.");
        }
        if (answers.stale() || answers.shown().isEmpty()) {
            return Optional.of("The answers are not up to date: wait until all cells are answered.");
        }
        return problem().or(this::unsaved).or(this::error);
    }

    private Optional<String> problem() {
        return answers.problems().stream().findFirst()
                .map(found -> "A problem is open: " + found.place() + ": " + found.message());
    }

    private Optional<String> unsaved() {
        return paths().stream().filter(answers.documents()::unsaved).findFirst()
                .map(path -> "Save " + path + " first: a sign-off rests on documents as they are stored.");
    }

    private Optional<String> error() {
        return errorIn(session.file()).or(() -> paths().stream()
                .flatMap(path -> DocumentFiles.resolve(session.file(), path).stream())
                .flatMap(file -> errorIn(file).stream()).findFirst());
    }

    private Optional<String> errorIn(IFile file) {
        return board.of(file).stream().filter(found -> found.severity() == Severity.ERROR)
                .filter(found -> !found.path().startsWith(OF_SIGN_OFF)).map(FoundProblem::message)
                .map(message -> "An error is open in " + file.getName() + ": " + message).findFirst();
    }

    private List<String> paths() {
        return answers.chart().map(FileReferences::of).map(List::copyOf).orElse(List.of());
    }

    /**
     * Signs off.
     *
     * @throws CoreException if a document cannot be read
     */
    void signOff(String by) throws CoreException {
        FitChart chart = answers.chart().orElseThrow();
        RuleSet rules = answers.documents().rules(chart.getRules()).orElseThrow();
        List<DocumentHash> hashes = new ArrayList<>();
        hashes.add(hash(chart.getRules(), rules));
        for (String path : chart.getLibraries()) {
            hashes.add(hash(path, answers.documents().library(path).orElseThrow()));
        }
        SignOff signOff = SigningOff.of(chart, answers.shown().orElseThrow(), rules, by, LocalDate.now(), hashes);
        session.set(chart, Literals.FIT_CHART__SIGN_OFF, signOff);
    }

    private DocumentHash hash(String path, Document document) throws CoreException {
        IFile file = DocumentFiles.resolve(session.file(), path).orElseThrow();
        return DocumentHashes.of(path, document, StoredHashes.bytes(file));
    }

    /** Takes the sign-off back. */
    void withdraw() {
        answers.chart().ifPresent(chart -> session.set(chart, Literals.FIT_CHART__SIGN_OFF, null));
    }
}
