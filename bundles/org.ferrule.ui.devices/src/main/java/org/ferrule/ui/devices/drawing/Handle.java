/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.model.Disc;
import org.ferrule.model.Features;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.FigureKind;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;
import org.ferrule.ui.devices.part.PartValue;
import org.ferrule.ui.devices.part.Shown;

/**
 * A place of a drawing by which a figure can be dragged.
 *
 * @param name what it is called on the screen
 * @param spot where it lies
 * @param targets the values that follow it, one or more; the first tells how it snaps
 * @param least the least figure that it can be dragged to
 * @param most the largest figure that it can be dragged to
 */
record Handle(String name, Spot spot, List<Target> targets, Length least, Length most) {

    /** How much finer than the last printed digit a figure can be dragged without snapping. */
    private static final int FINER = 100;

    /** An attribute of a part that holds a readable dimension, or where a disc lies. */
    record Target(Shown part, EAttribute feature) {

        Dimension value() {
            return (Dimension) part.complete().eGet(feature);
        }

        Stated stated() {
            return part.complete().eGet(feature) instanceof Offset offset
                    ? Stated.OfOffset.of((Disc) part.complete(), offset)
                    : new Stated.OfDimension(value());
        }

        PartValue movedTo(Length length) {
            return new PartValue(part, feature, stated().movedTo(length).value());
        }
    }

    Handle {
        targets = List.copyOf(targets);
    }

    Stated stated() {
        return targets.get(0).stated();
    }

    Length value() {
        return stated().length();
    }

    /** The same handle, which moves its figure no farther down than this, if it is not below already. */
    Handle above(Length bound) {
        return new Handle(name, spot, targets, least.max(bound.min(value())), most);
    }

    /** The same handle, which moves its figure no farther up than this, if it is not above already. */
    Handle below(Length bound) {
        return new Handle(name, spot, targets, least, most.min(bound.max(value())));
    }

    FigureKind kind() {
        return Features.figureKind(targets.get(0).feature()).orElse(FigureKind.LENGTH);
    }

    /** What an arrow key moves the figure by: the last printed digit. */
    Length step() {
        return stated().step();
    }

    /** Tells whether a figure can be moved no farther in a direction, which is 1 or -1. */
    boolean isLast(Length figure, int direction) {
        return snapped(figure.plus(step().times(direction))).equals(figure);
    }

    /** The figure on the grid of the last printed digit that is nearest to a length, within the limits. */
    Length snapped(Length wanted) {
        return onGrid(wanted, step());
    }

    /** The figure that is nearest to a length, two digits finer than is printed, within the limits. */
    Length free(Length wanted) {
        return onGrid(wanted, step().dividedBy(FINER));
    }

    private Length onGrid(Length wanted, Length grid) {
        Length nearest = grid.times(count(wanted, grid, RoundingMode.HALF_EVEN));
        Length low = grid.times(count(least, grid, RoundingMode.CEILING));
        Length high = grid.times(count(most, grid, RoundingMode.FLOOR));
        return low.compareTo(high) > 0 ? value() : nearest.max(low).min(high);
    }

    private static long count(Length length, Length grid, RoundingMode rounding) {
        return BigDecimal.valueOf(length.thirdNanometres())
                .divide(BigDecimal.valueOf(grid.thirdNanometres()), 0, rounding).longValueExact();
    }

    List<PartValue> movedTo(Length length) {
        return targets.stream().map(target -> target.movedTo(length)).toList();
    }

    /** Tells whether a line states what would be changed. */
    boolean overrides() {
        return targets.stream().anyMatch(target -> PartValue.overrides(target.part(), target.feature()));
    }

    /** Tells whether another handle, maybe of a later state of the document, moves the same. */
    boolean isLike(Handle other) {
        return name.equals(other.name) && spot.lumen().equals(other.spot.lumen());
    }
}
