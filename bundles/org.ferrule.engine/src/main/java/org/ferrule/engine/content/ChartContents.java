/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.content;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Head;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.chart.page.ShownNumber;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.engine.chart.AssembledChart;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.engine.signoff.SignOffWords;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.FitChart;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.Paper;
import org.ferrule.model.PrimaryUnit;
import org.ferrule.model.RuleSet;
import org.ferrule.quantity.LengthUnit;

/** What a solved chart shows on paper, from its document. To be used where the model may be read. */
public final class ChartContents {
    private ChartContents() {
    }

    /**
     * The content of a chart.
     *
     * @param libraries that the chart refers to, in its order
     * @param today stands on charts that have no date of their own
     * @param signed how the chart stands to its sign-off; absent where it has none
     */
    public static ChartContent of(FitChart chart, SolvedChart solved, RuleSet rules, List<DeviceLibrary> libraries,
            LocalDate today, Optional<SignOffState> signed) {
        AssembledChart assembled = solved.chart();
        Paper paper = chart.getPaper() == null ? ModelFactory.eINSTANCE.createPaper() : chart.getPaper();
        UnitPreferences units = units(paper);
        return new ChartContent(imprint(chart, today, signed), basis(chart, assembled, rules, libraries),
                rows(assembled), columns(assembled),
                new MatrixAnswers(solved.matrix()), chart.getFootnotes(), units, shown(paper), format(paper));
    }

    private static Imprint imprint(FitChart chart, LocalDate today, Optional<SignOffState> signed) {
        return new Imprint(text(chart.getTitle()), text(chart.getAudience()), text(chart.getAuthor()),
                text(chart.getRevision()), date(chart, today),
                signed.map(new SignOffWords()::inWords));
    }

    static LocalDate date(Document document, LocalDate today) {
        try {
            return document.getDate() == null ? today : LocalDate.parse(document.getDate());
        } catch (DateTimeParseException e) {
            return today;
        }
    }

    private static Basis basis(FitChart chart, AssembledChart assembled, RuleSet rules,
            List<DeviceLibrary> libraries) {
        return new Basis(edition(rules), libraries.stream().map(ChartContents::edition).toList(),
                ChartConditionWords.of(chart, assembled));
    }

    static Edition edition(Document document) {
        return new Edition(text(document.getTitle()), text(document.getRevision()));
    }

    private static List<Head> rows(AssembledChart assembled) {
        List<Head> heads = new ArrayList<>();
        for (int i = 0; i < assembled.outer().size(); i++) {
            heads.add(Heads.outer(assembled.outer().get(i), assembled.outerGroups().get(i)));
        }
        return heads;
    }

    private static List<Head> columns(AssembledChart assembled) {
        List<Head> heads = new ArrayList<>();
        for (int i = 0; i < assembled.inner().size(); i++) {
            heads.add(Heads.inner(assembled.inner().get(i), assembled.innerGroups().get(i)));
        }
        return heads;
    }

    private static UnitPreferences units(Paper paper) {
        boolean inches = paper.getPrimaryUnit() == PrimaryUnit.IN;
        return UnitPreferences.in(inches ? LengthUnit.INCH : LengthUnit.MILLIMETRE)
                .with(inches ? LengthUnit.MILLIMETRE : LengthUnit.INCH);
    }

    private static ShownNumber shown(Paper paper) {
        return switch (paper.getShowNumbers()) {
            case WORST -> ShownNumber.WORST;
            case NOMINAL -> ShownNumber.NOMINAL;
            case NONE -> ShownNumber.NONE;
        };
    }

    private static PaperFormat format(Paper paper) {
        PaperFormat.Size size = switch (paper.getSize()) {
            case A4 -> PaperFormat.Size.A4;
            case A3 -> PaperFormat.Size.A3;
            case LETTER -> PaperFormat.Size.LETTER;
            case TABLOID -> PaperFormat.Size.TABLOID;
        };
        return new PaperFormat(size, paper.getOrientation() == org.ferrule.model.Orientation.LANDSCAPE);
    }

    static String text(String value) {
        return value == null ? "" : value;
    }
}
