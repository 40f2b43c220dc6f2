/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.Body;
import org.ferrule.geometry.DiscSet;
import org.ferrule.geometry.FreeDisc;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Length;

/**
 * What a shaft or a wire is across its axis, in figures.
 *
 * @param contour its form
 * @param figures its dimensions, in the contour's order
 */
public record Profile(Contour contour, List<Figure> figures) {
    private static final Contour ROUND = new Contour.Round(Optional.empty());
    private static final Length LEAST = new Length(1);

    public Profile {
        figures = List.copyOf(figures);
    }

    static Profile disc(Figure diameter) {
        return new Profile(ROUND, List.of(diameter));
    }

    public boolean isRound() {
        return contour instanceof Contour.Round;
    }

    boolean centreAssumed() {
        return figures.stream().anyMatch(Figure::centreAssumed);
    }

    /** Whether another one has the same parts in the same places, so that one can run into the other. */
    boolean isLike(Profile other) {
        if (contour instanceof Contour.Bundle bundle) {
            return other.contour instanceof Contour.Bundle others && places(bundle).equals(places(others));
        }
        return contour.getClass() == other.contour.getClass();
    }

    private static List<List<Length>> places(Contour.Bundle bundle) {
        return bundle.members().stream().map(m -> List.of(m.x(), m.y())).toList();
    }

    /** The body in one lane. */
    public Body body(Function<Figure, Length> lane) {
        if (contour instanceof Contour.Round) {
            return new FreeDisc(lane.apply(figures.get(0)));
        }
        if (contour instanceof Contour.Oval) {
            return stadium(lane.apply(figures.get(0)), lane.apply(figures.get(1)));
        }
        return discs((Contour.Bundle) contour, lane);
    }

    /** An oval that is almost round may have its larger measure across in one lane and its other one in another. */
    private static Stadium stadium(Length a, Length b) {
        return new Stadium(a.max(b).max(LEAST), a.min(b).max(LEAST));
    }

    private DiscSet discs(Contour.Bundle bundle, Function<Figure, Length> lane) {
        List<DiscSet.Disc> discs = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            Contour.Member member = bundle.members().get(i);
            discs.add(new DiscSet.Disc(member.x(), member.y(), lane.apply(figures.get(i))));
        }
        return new DiscSet(discs);
    }

    /** The profile whose figures are made, one by one, of these and those of one like it. */
    Profile with(Profile like, BinaryOperator<Figure> operator) {
        List<Figure> made = new ArrayList<>(figures.size());
        for (int i = 0; i < figures.size(); i++) {
            made.add(operator.apply(figures.get(i), like.figures.get(i)));
        }
        return new Profile(contour, made);
    }
}
