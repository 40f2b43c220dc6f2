/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.engine.plan.PlanProblem;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.quantity.LengthUnit;

/** Reads one case with all that it refers to, and makes it ready to be planned. */
public final class CaseRun {
    private final Path file;
    private final OpenCase open;
    private final AssembledCase assembled;

    private CaseRun(Path file, OpenCase open, AssembledCase assembled) {
        this.file = file;
        this.open = open;
        this.assembled = assembled;
    }

    /** Reads a case. */
    public static CaseRun of(Path file) {
        OpenCase open = new DocumentFiles().caseFile(file);
        Extensions extensions = Extensions.ofClassPath(CaseRun.class.getClassLoader());
        try {
            return new CaseRun(file, open, open.assemble(extensions.checks(), LocalDate.now()));
        } catch (RuleSetException e) {
            throw new CommandLineException(file + ": " + e.getMessage());
        }
    }

    /** The documents. */
    public OpenCase open() {
        return open;
    }

    /** The case, ready to be planned. */
    public AssembledCase assembled() {
        return assembled;
    }

    /** The words in which its plan is said: millimetres with inches beside them. */
    public PlanWords words() {
        return PlanWords.english(assembled.ladder(), assembled.instruments(), assembled.stock().shelf(),
                UnitPreferences.in(LengthUnit.MILLIMETRE).with(LengthUnit.INCH), currency());
    }

    private String currency() {
        return open.shelf().map(shelf -> shelf.getCurrency()).orElse("");
    }

    /** What cannot be planned with as it is written, a line each. */
    public List<String> problems() {
        return assembled.problems().stream().map(this::line).toList();
    }

    private String line(PlanProblem problem) {
        String place = problem.path() + (problem.feature().isEmpty() ? "" : "/" + problem.feature());
        return file + ": " + problem.document().format() + ": " + (place.isEmpty() ? "" : place + ": ")
                + problem.message();
    }
}
