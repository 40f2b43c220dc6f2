/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.drawing.DeviceLayout;
import org.ferrule.quantity.Length;

/** The handles of the drawing that is shown, which one is chosen, and what it is being moved to. */
final class HandleState {

    private final Runnable changed;
    private List<Handle> handles = List.of();
    private DeviceLayout layout;
    private Handle chosen;
    private Length moved;

    HandleState(Runnable changed) {
        this.changed = changed;
    }

    /** Shows other handles; the one that was chosen stays so, if there still is such a one. */
    void show(List<Handle> now) {
        Handle before = chosen;
        handles = now;
        moved = null;
        chosen = before == null ? null : handles.stream().filter(before::isLike).findFirst().orElse(null);
        changed.run();
    }

    void layOut(DeviceLayout drawn) {
        layout = drawn;
    }

    List<Handle> handles() {
        return layout == null ? List.of() : handles;
    }

    DeviceLayout layout() {
        return layout;
    }

    Optional<Handle> chosen() {
        return Optional.ofNullable(chosen);
    }

    /** The figure that the chosen handle is being moved to. */
    Optional<Length> moved() {
        return Optional.ofNullable(moved);
    }

    void choose(Handle handle) {
        chosen = handle;
        moved = null;
        changed.run();
    }

    void moveTo(Length figure) {
        moved = figure;
        changed.run();
    }

    /** Gives up what is being moved. */
    void cancel() {
        moved = null;
        changed.run();
    }

    /** Chooses the next handle, or the one before; returns whether there is one. */
    boolean step(int by) {
        int outside = by < 0 ? handles.size() : -1;
        int index = (chosen == null ? outside : handles.indexOf(chosen)) + by;
        boolean there = index >= 0 && index < handles.size();
        choose(there ? handles.get(index) : null);
        return there;
    }
}
