/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.FitChart;
import org.ferrule.model.SignOff;
import org.ferrule.model.SignedRow;

/**
 * What a chart says of its sign-off, and what it asks now: immutable, free of model objects.
 *
 * @param by who signed it off
 * @param date when
 * @param inner keys of the columns then
 * @param rows the rows then
 * @param hashes SHA-256 of the documents then, by path
 * @param asked what was asked then
 * @param askedNow what is asked now
 */
public record SignedVerdicts(String by, String date, List<String> inner, List<Row> rows, Map<String, String> hashes,
        List<String> asked, List<String> askedNow) {

    /**
     * A row; each verdict a letter of {@link VerdictLetters}, one for each column.
     *
     * @param outer key of the row
     * @param in going in
     * @param out coming out
     */
    public record Row(String outer, String in, String out) {
    }

    public SignedVerdicts {
        inner = List.copyOf(inner);
        rows = List.copyOf(rows);
        hashes = Map.copyOf(hashes);
        asked = List.copyOf(asked);
        askedNow = List.copyOf(askedNow);
    }

    /** The sign-off of a chart; nothing when it has none. */
    public static Optional<SignedVerdicts> of(FitChart chart) {
        return Optional.ofNullable(chart.getSignOff()).map(signOff -> of(chart, signOff));
    }

    /** The verdicts of a chart as they stand, as if nobody in particular had signed them off. */
    public static SignedVerdicts of(SolvedChart solved) {
        List<Row> rows = new ArrayList<>();
        for (int row = 0; row < solved.chart().outer().size(); row++) {
            rows.add(new Row(solved.chart().outer().get(row).key(), SigningOff.in(solved.matrix(), row),
                    SigningOff.out(solved.matrix(), row)));
        }
        return new SignedVerdicts("", "", solved.chart().inner().stream().map(CataloguedDevice::key).toList(), rows,
                Map.of(), List.of(), List.of());
    }

    private static SignedVerdicts of(FitChart chart, SignOff signOff) {
        Map<String, String> hashes = new LinkedHashMap<>();
        for (DocumentHash hash : signOff.getDocuments()) {
            hashes.put(text(hash.getFile()), text(hash.getSha256()));
        }
        int columns = signOff.getInner().size();
        return new SignedVerdicts(text(signOff.getBy()), text(signOff.getDate()), signOff.getInner(),
                signOff.getRows().stream().map(row -> row(row, columns)).toList(), hashes, signOff.getAsked(),
                AskedWords.of(chart));
    }

    /** Where letters are missing stand blanks, which are no verdict. */
    private static Row row(SignedRow row, int columns) {
        String in = padded(text(row.getIn()), columns);
        return new Row(text(row.getOuter()), in, row.getOut() == null ? in : padded(row.getOut(), columns));
    }

    private static String padded(String letters, int columns) {
        return letters + " ".repeat(Math.max(0, columns - letters.length()));
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }

    /** The keys of the rows then. */
    Set<String> outer() {
        return rows.stream().map(Row::outer).collect(Collectors.toSet());
    }
}
