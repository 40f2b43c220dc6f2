/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** Draws problems. */
final class RandomProblem {
    private static final List<String> AXES = List.of("support", "profile", "modify");

    private final Random random;
    private final int items;

    RandomProblem(Random random, int items) {
        this.random = random;
        this.items = items;
    }

    /** A problem with at most that many cases, rungs a case, and needs a rung. */
    PurchaseProblem draw(int cases, int rungs, int needs) {
        List<PurchaseCase> drawn = IntStream.range(0, 1 + random.nextInt(cases))
                .mapToObj(i -> planned("case " + i, rungs, needs)).toList();
        List<Offer> offers = IntStream.range(0, items).filter(i -> random.nextInt(3) > 0).mapToObj(this::offer)
                .toList();
        return new PurchaseProblem(drawn, shelf(), offers, 1 + random.nextInt(2), Map.of(),
                Goal.values()[random.nextInt(2)]);
    }

    private PurchaseCase planned(String id, int rungs, int needs) {
        return new PurchaseCase(id, Problems.DAY.plusDays(random.nextInt(3) - 1),
                IntStream.range(0, 1 + random.nextInt(rungs)).mapToObj(i -> new Rung("r" + i,
                        AXES.get(random.nextInt(AXES.size())), IntStream.range(0, 1 + random.nextInt(needs))
                                .mapToObj(this::need).toList()))
                        .toList());
    }

    private Need need(int number) {
        List<String> all = new ArrayList<>(IntStream.range(0, items).mapToObj(i -> "i" + i).toList());
        Collections.shuffle(all, random);
        int preferred = 1 + random.nextInt(2);
        return new Need("n" + number, 1 + random.nextInt(4) / 3, all.subList(0, preferred),
                all.subList(preferred, preferred + random.nextInt(2)));
    }

    private Offer offer(int item) {
        return new Offer("i" + item, Optional.of(BigDecimal.valueOf(random.nextInt(2000), random.nextInt(3))),
                random.nextInt(5) == 0 ? Optional.of(Problems.DAY.plusDays(random.nextInt(3) - 1)) : Optional.empty());
    }

    private Shelf shelf() {
        return new Shelf(IntStream.range(0, items).mapToObj(i -> Problems.item("i" + i, IntStream.range(0,
                random.nextInt(3)).mapToObj(number -> lot(i + "-" + number)).toArray(Lot[]::new))).toList());
    }

    private Lot lot(String number) {
        return Problems.lot(number, random.nextInt(4) - 2, 1 + random.nextInt(2));
    }
}
