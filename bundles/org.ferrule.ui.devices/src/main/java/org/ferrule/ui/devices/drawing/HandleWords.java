/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

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
        List<Stated> stated = handle.targets().stream().map(target -> target.stated().movedTo(figure)).toList();
        List<String> lines = new ArrayList<>(List.of(handle.name()));
        String texts = stated.stream().map(Stated::text).distinct().collect(Collectors.joining(" / "));
        lines.add(texts + change(handle, figure));
        lines.add(stated.get(0).words(figures, handle.kind()));
        if (!figure.equals(handle.value())) {
            lines.addAll(limit(handle, figure));
        }
        if (handle.overrides()) {
            lines.add("Stated by the line; a change is for this size only");
        }
        return lines;
    }

    /** Why a figure follows no farther: a wall, another measure, a neighbour or its own tolerance. */
    private static List<String> limit(Handle handle, Length figure) {
        boolean least = handle.isLast(figure, -1) && figure.compareTo(handle.value()) < 0;
        boolean most = handle.isLast(figure, 1) && figure.compareTo(handle.value()) > 0;
        return least ? List.of("No smaller: what lies beside or inside needs it")
                : most ? List.of("No larger: what lies beside or around leaves no more") : List.of();
    }

    private static String change(Handle handle, Length figure) {
        Length by = figure.minus(handle.value());
        return by.equals(Length.ZERO) ? "" : "   (" + (by.isNegative() ? "" : "+")
                + LengthFormat.faithful(handle.stated().unit()).format(by) + ")";
    }
}
