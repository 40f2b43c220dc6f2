/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.content;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.closed.ClosedCaseWords;
import org.ferrule.engine.limits.CaseLimits;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ShelfDocument;
import org.ferrule.plansheet.page.SheetContent;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.quantity.LengthUnit;

/** What a planned case shows on paper, from its documents. To be used where the model may be read. */
public final class SheetContents {
    private SheetContents() {
    }

    /**
     * The content of a plan sheet.
     *
     * @param open the case and what it refers to
     * @param assembled the same, ready to be planned
     * @param plan its plan
     * @param today stands on cases that have no date of their own
     */
    public static SheetContent of(OpenCase open, AssembledCase assembled, Plan plan, PaperFormat paper,
            LocalDate today) {
        CaseDocument file = open.file();
        Imprint imprint = new Imprint(ChartContents.text(file.getTitle()), "", "",
                ChartContents.text(file.getRevision()), ChartContents.date(file, today));
        return new SheetContent(imprint, basis(open), plan, words(open, assembled), paper,
                Optional.empty(), closed(file), CaseLimits.brief(file, plan));
    }

    private static Optional<String> closed(CaseDocument file) {
        return Optional.ofNullable(file.getClosing())
                .map(closing -> ClosedCaseWords.head(ChartContents.text(closing.getClosed()), closing.getEnded()));
    }

    /** The words for a case: with the names of its ladder, its devices and its shelf, in millimetres. */
    public static PlanWords words(OpenCase open, AssembledCase assembled) {
        return PlanWords.english(assembled.ladder(), assembled.instruments(), assembled.stock().shelf(),
                UnitPreferences.in(LengthUnit.MILLIMETRE),
                open.shelf().map(ShelfDocument::getCurrency).map(ChartContents::text).orElse(""));
    }

    private static Basis basis(OpenCase open) {
        return new Basis(ChartContents.edition(open.rules()),
                open.libraries().stream().map(LibraryReader::library).map(ChartContents::edition).toList(),
                open.shelf().map(ChartContents::edition).map(shelf -> shelf.revision().isEmpty() ? shelf.title()
                        : shelf.title() + ", rev. " + shelf.revision()).map(List::of).orElse(List.of()));
    }
}
