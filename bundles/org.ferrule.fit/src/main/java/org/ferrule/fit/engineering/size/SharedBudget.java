/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.LongPredicate;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * Works out who must give how much where the room that is needed does not run linearly with the diameters: of three
 * discs and more side by side, and of a rigid part in a bend. Each cut is found by halving.
 */
final class SharedBudget {
    private static final long WHOLE = 1_000_000;

    private final List<Figure> discs;
    private final Function<List<Length>, Length> lumenNeeded;
    private final List<Giver> givers;
    private final Length worst;
    private final Length required;
    private final Length before;

    /**
     * A budget.
     *
     * @param discs what the lumen has to take
     * @param lumenNeeded by discs of these diameters; larger the larger they are
     * @param worst clearance that the solver tells
     * @param required clearance
     */
    SharedBudget(List<Figure> discs, Function<List<Length>, Length> lumenNeeded, List<Giver> givers, Length worst,
            Length required) {
        this.discs = List.copyOf(discs);
        this.lumenNeeded = lumenNeeded;
        this.givers = givers;
        this.worst = worst;
        this.required = required;
        this.before = needed(new Length[givers.size()]);
    }

    /** What would still be missing if nothing had any spread. */
    Length missingWithoutSpread() {
        return missing(cuts(WHOLE)).max(Length.ZERO);
    }

    /** What each must give. */
    List<Contributor> contributors() {
        long share = least(WHOLE, k -> isEnough(cuts(k)));
        Length[] shares = cuts(share);
        List<Contributor> contributors = new ArrayList<>();
        for (int i = 0; i < givers.size(); i++) {
            Giver giver = givers.get(i);
            contributors.add(new Contributor(giver.place(), giver.assumed(), giver.spread(), alone(i), shares[i]));
        }
        return contributors;
    }

    /** More than its spread where that does not do it. */
    private Length alone(int giver) {
        Length spread = givers.get(giver).spread();
        if (!isEnough(only(giver, spread))) {
            return spread.plus(missing(only(giver, spread)));
        }
        return new Length(least(spread.thirdNanometres(), cut -> isEnough(only(giver, new Length(cut)))));
    }

    private Length[] only(int giver, Length cut) {
        Length[] cuts = new Length[givers.size()];
        cuts[giver] = cut;
        return cuts;
    }

    /** Each gives the same share of its spread, rounded up. */
    private Length[] cuts(long millionths) {
        return givers.stream().map(g -> new Length(-Math.floorDiv(
                -Math.multiplyExact(g.spread().thirdNanometres(), millionths), WHOLE))).toArray(Length[]::new);
    }

    /** The least number that is enough, or the most there is. */
    private static long least(long most, LongPredicate enough) {
        long tooFew = -1;
        long enoughFrom = most;
        while (enoughFrom - tooFew > 1) {
            long middle = (enoughFrom + tooFew) / 2;
            if (enough.test(middle)) {
                enoughFrom = middle;
            } else {
                tooFew = middle;
            }
        }
        return enoughFrom;
    }

    private boolean isEnough(Length[] cuts) {
        return missing(cuts).compareTo(Length.ZERO) <= 0;
    }

    private Length missing(Length[] cuts) {
        Length given = before.minus(needed(cuts));
        for (int i = 0; i < cuts.length; i++) {
            given = givers.get(i).members().isEmpty() && cuts[i] != null ? given.plus(cuts[i]) : given;
        }
        return required.minus(worst).minus(given);
    }

    private Length needed(Length[] cuts) {
        List<Length> high = new ArrayList<>(discs.stream().map(Figure::high).toList());
        for (int i = 0; i < cuts.length; i++) {
            for (int member : givers.get(i).members()) {
                Length cut = cuts[i] == null ? Length.ZERO : cuts[i];
                high.set(member, high.get(member).minus(cut).max(discs.get(member).centre()));
            }
        }
        return lumenNeeded.apply(high);
    }
}
