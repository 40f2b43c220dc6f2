/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.figure.ReadFigure;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;

/** Notes on figures whose ends come from the rule set and not from the label. */
final class Assumptions {
    private Assumptions() {
    }

    static List<Reason> of(Device device, String where, List<ReadFigure> figures) {
        List<Reason> notes = new ArrayList<>();
        for (ReadFigure figure : figures) {
            figure.assumedFrom().ifPresent(span -> addOnce(notes, Reason.of(ReasonCode.SPAN_ASSUMED,
                    Reason.name(device.id()), Reason.name(figure.printed().text()), Reason.name(where),
                    Reason.diameter(figure.figure().low()), Reason.diameter(figure.figure().high()),
                    Reason.source(span.source()))));
        }
        return notes;
    }

    private static void addOnce(List<Reason> notes, Reason note) {
        if (!notes.contains(note)) {
            notes.add(note);
        }
    }
}
