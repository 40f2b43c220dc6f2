/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;

import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.plansheet.page.Detail.Omission;

/**
 * A plan on one page, to be printed and ticked off: first the wire, then where the case stands, the steps with what to take
 * from the shelf, what must be at hand, when to stop, and what is not in the plan. A short plan is set larger. A long one is
 * set smaller before it is shortened, in the order of {@link Detail.Omission}, and the foot of the page says of what; nothing
 * is set smaller than 6 pt. Steps are named {@code rung:NUMBER} for hit-testing.
 */
public final class PlanSheet {
    private static final List<Double> ENLARGEMENTS = List.of(1.3, 1.2, 1.12, 1.06);
    /** Of 6.5 pt to 6 pt; the last is the smallest. */
    private static final List<Double> REDUCTIONS = List.of(1.0, 0.96, 6 / 6.5);

    private PlanSheet() {
    }

    /**
     * The sheet.
     *
     * @param created when it was made
     * @throws IllegalArgumentException naming the title, if not even the first step has room on the paper
     */
    public static Document of(SheetContent content, OffsetDateTime created) {
        double scale = content.paper().scale();
        Stream<Layout> larger = ENLARGEMENTS.stream().map(more -> new Layout(content, Detail.full(), scale * more));
        Layout layout = larger.filter(Layout::fits).findFirst().orElseGet(() -> shortened(content));
        DocumentInfo info = DocumentInfo.of(Printable.line(content.imprint().title()), created)
                .by(Printable.line(content.imprint().author()))
                .about(content.words().phrases().get("sheet.subject"));
        return new Document(info, List.of(layout.picture()));
    }

    /**
     * Shortened until it fits in the smallest lettering; then, if all steps are there, what was left out last comes back
     * first where it has room; then it is set as large as it fits.
     */
    private static Layout shortened(SheetContent content) {
        double scale = content.paper().scale() * REDUCTIONS.get(REDUCTIONS.size() - 1);
        Detail detail = Detail.shorterAndShorter(content.plan().rungs().size()).stream()
                .filter(shorter -> new Layout(content, shorter, scale).fits()).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no page can hold the plan of \""
                        + content.imprint().title() + "\""));
        Omission[] omissions = Omission.values();
        boolean allSteps = detail.rungs() >= content.plan().rungs().size();
        for (int i = omissions.length - 1; allSteps && i >= 0; i--) {
            if (!detail.tells(omissions[i]) && detail.hasRoomFor(omissions[i])
                    && new Layout(content, detail.telling(omissions[i]), scale).fits()) {
                detail = detail.telling(omissions[i]);
            }
        }
        Detail told = detail;
        return REDUCTIONS.stream().map(less -> new Layout(content, told, content.paper().scale() * less))
                .filter(Layout::fits).findFirst().orElseThrow();
    }
}
