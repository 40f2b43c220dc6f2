/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.ui.preferences.FigureWords;

/** What is said about a handle that is chosen or being dragged. */
final class HandleWords {

    private final FigureWords figures;

    HandleWords(FigureWords figures) {
        this.figures = figures;
    }

    /** The name, the text that would be stated, what it amounts to, and where it would be stated. */
    List<String> lines(Handle handle, Length figure) {
        List<Dimension> stated = handle.targets().stream().map(target -> target.value().movedTo(figure)).toList();
        List<String> lines = new ArrayList<>(List.of(handle.name()));
        String texts = stated.stream().map(Dimension::text).distinct().collect(Collectors.joining(" / "));
        lines.add(texts + change(handle, figure));
        lines.add(figures.of(stated.get(0), handle.kind()));
        if (handle.overrides()) {
            lines.add("Stated by the line; a change is for this size only");
        }
        return lines;
    }

    private static String change(Handle handle, Length figure) {
        Length by = figure.minus(handle.value());
        return by.equals(Length.ZERO) ? "" : "   (" + (by.isNegative() ? "" : "+")
                + LengthFormat.faithful(handle.stated().unit()).format(by) + ")";
    }
}
