/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.ui.IMemento;

/**
 * What of the look of a matrix the chart has no place for: whether it is transposed, shows sums, what is folded and
 * pinned, and an order of lines that the chart does not list one by one. The editor remembers it.
 */
public final class MatrixState {

    private static final String TRANSPOSED = "transposed";
    private static final String SUMS = "sums";
    private static final String FOLDED = "folded";
    private static final String PINNED = "pinned";
    private static final String ORDER = "order";
    private static final String NAME = "name";

    private final MatrixContent content;

    /** The state of a content. */
    public MatrixState(MatrixContent content) {
        this.content = content;
    }

    /** Writes the state down. */
    public void save(IMemento memento) {
        memento.putBoolean(TRANSPOSED, content.rowSide() == Side.INNER);
        memento.putBoolean(SUMS, content.sums().shown());
        for (Side side : Side.values()) {
            IMemento of = memento.createChild(side.name());
            save(of, FOLDED, content.axis(side).folded().names());
            save(of, PINNED, content.axis(side).order().pinned());
            save(of, ORDER, content.axis(side).order().own());
        }
    }

    private static void save(IMemento memento, String type, Collection<String> names) {
        names.forEach(name -> memento.createChild(type).putString(NAME, name));
    }

    /** Takes the state over, before there are answers. */
    public void restore(IMemento memento) {
        if (Boolean.TRUE.equals(memento.getBoolean(TRANSPOSED)) && content.rowSide() == Side.OUTER) {
            content.transpose();
        }
        for (Side side : Side.values()) {
            IMemento of = memento.getChild(side.name());
            if (of != null) {
                content.axis(side).folded().set(names(of, FOLDED));
                content.axis(side).order().pin(names(of, PINNED));
                content.axis(side).order().own(names(of, ORDER));
            }
        }
        if (Boolean.TRUE.equals(memento.getBoolean(SUMS))) {
            content.showSums(true);
        }
    }

    private static List<String> names(IMemento memento, String type) {
        return Stream.of(memento.getChildren(type)).map(child -> child.getString(NAME)).toList();
    }
}
