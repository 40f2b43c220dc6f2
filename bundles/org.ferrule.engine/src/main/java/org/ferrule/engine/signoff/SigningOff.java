/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import java.time.LocalDate;
import java.util.List;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.RuleSet;
import org.ferrule.model.SignOff;
import org.ferrule.model.SignedRow;

/** Writes down that somebody answers for the verdicts of a chart, and what they were. */
public final class SigningOff {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;

    private SigningOff() {
    }

    /**
     * The record of a chart with its answers; the chart itself is not changed.
     *
     * @param by name or initials, as typed
     * @param documents fingerprints of the rule set and the libraries, in this order
     * @throws IllegalArgumentException when nobody is named, or a part of the chart could not be asked
     */
    public static SignOff of(FitChart chart, SolvedChart solved, RuleSet rules, String by, LocalDate day,
            List<DocumentHash> documents) {
        if (by.isBlank()) {
            throw new IllegalArgumentException("a sign-off names who answers for it");
        }
        if (!solved.chart().problems().isEmpty()) {
            throw new IllegalArgumentException(
                    "not everything could be asked: " + solved.chart().problems().get(0).message());
        }
        SignOff signOff = MODEL.createSignOff();
        signOff.setBy(by.strip());
        signOff.setDate(day.toString());
        signOff.setRuleSet(rules.getTitle());
        signOff.getAsked().addAll(AskedWords.of(chart));
        signOff.getDocuments().addAll(documents);
        solved.chart().inner().stream().map(CataloguedDevice::key).forEach(signOff.getInner()::add);
        for (int row = 0; row < solved.chart().outer().size(); row++) {
            signOff.getRows().add(row(solved, row));
        }
        return signOff;
    }

    private static SignedRow row(SolvedChart solved, int row) {
        SignedRow signed = MODEL.createSignedRow();
        signed.setOuter(solved.chart().outer().get(row).key());
        String in = in(solved.matrix(), row);
        String out = out(solved.matrix(), row);
        signed.setIn(in);
        signed.setOut(out.equals(in) ? null : out);
        return signed;
    }

    /** The verdicts of a row going in, a letter each. */
    static String in(FitMatrix matrix, int row) {
        StringBuilder letters = new StringBuilder();
        for (int column = 0; column < matrix.question().inner().size(); column++) {
            letters.append(VerdictLetters.of(VerdictLook.of(matrix.in(row, column))));
        }
        return letters.toString();
    }

    /** The verdicts of a row coming out, a letter each. */
    static String out(FitMatrix matrix, int row) {
        StringBuilder letters = new StringBuilder();
        for (int column = 0; column < matrix.question().inner().size(); column++) {
            FitCell cell = matrix.cell(row, column);
            letters.append(VerdictLetters.of(VerdictLook.of(cell.out())));
        }
        return letters.toString();
    }
}
