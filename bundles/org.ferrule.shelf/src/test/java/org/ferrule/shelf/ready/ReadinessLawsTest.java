/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import static org.ferrule.shelf.stock.Stock.CASE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Pick;
import org.ferrule.shelf.stock.Shelf;
import org.ferrule.shelf.stock.Stock;
import org.junit.jupiter.api.Test;

/** What holds for every shelf and every list of cases. */
class ReadinessLawsTest {
    private static final int EXAMPLES = 2000;
    private static final int ITEMS = 4;

    private static void check(Consumer<Random> law) {
        long seed = Long.getLong("QT_SEED", 0);
        for (int i = 0; i < EXAMPLES; i++) {
            try {
                law.accept(new Random(seed + 1_000_003L * i));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("example " + i + " of seed " + seed + ": " + e.getMessage(), e);
            }
        }
    }

    private static Lot lot(int number, Random random) {
        return new Lot("L" + number, random.nextInt(4) == 0 ? Optional.empty()
                : Optional.of(CASE.plusDays(random.nextInt(7) - 3)), 1 + random.nextInt(3), "", Optional.empty());
    }

    private static Shelf shelf(Random random) {
        return new Shelf(IntStream.range(0, ITEMS).mapToObj(i -> Stock.item("i" + i, IntStream.range(0,
                random.nextInt(4)).mapToObj(number -> lot(number, random)).toArray(Lot[]::new))).toList());
    }

    private static Need need(int number, Random random) {
        List<String> preferred = new ArrayList<>();
        List<String> substitutes = new ArrayList<>();
        for (int i = 0; i < ITEMS; i++) {
            List<String> list = List.of(preferred, substitutes, new ArrayList<String>()).get(random.nextInt(3));
            list.add(random.nextInt(list.size() + 1), "i" + i);
        }
        return new Need("n" + number, 1 + random.nextInt(3), preferred, substitutes);
    }

    private static List<PlannedCase> cases(Random random) {
        return IntStream.range(0, 1 + random.nextInt(3)).mapToObj(number -> new PlannedCase("c" + number,
                CASE.plusDays(random.nextInt(3) - 1),
                IntStream.range(0, 1 + random.nextInt(3)).mapToObj(i -> need(i, random)).toList())).toList();
    }

    private static List<Readiness> readiness(Shelf shelf, List<PlannedCase> cases) {
        return answers(shelf, cases).map(NeedAnswer::readiness).toList();
    }

    private static Stream<NeedAnswer> answers(Shelf shelf, List<PlannedCase> cases) {
        return ReadinessCheck.ofCases(shelf, cases).cases().stream().flatMap(answer -> answer.needs().stream());
    }

    /** The shelf with one unit less, of any lot. */
    private static Shelf withOneLess(Shelf shelf, Random random) {
        List<Item> items = new ArrayList<>(shelf.items());
        List<Integer> stocked = IntStream.range(0, ITEMS).filter(i -> !items.get(i).lots().isEmpty()).boxed().toList();
        if (stocked.isEmpty()) {
            return shelf;
        }
        int i = stocked.get(random.nextInt(stocked.size()));
        List<Lot> lots = new ArrayList<>(items.get(i).lots());
        Lot lot = lots.remove(random.nextInt(lots.size()));
        if (lot.quantity() > 1) {
            lots.add(lot.withQuantity(lot.quantity() - 1));
        }
        items.set(i, items.get(i).withLots(lots));
        return new Shelf(items);
    }

    @Test
    void oneUnitLessNeverMakesANeedReadier() {
        check(random -> {
            Shelf shelf = shelf(random);
            List<PlannedCase> cases = cases(random);
            List<Readiness> before = readiness(shelf, cases);
            List<Readiness> after = readiness(withOneLess(shelf, random), cases);
            for (int i = 0; i < before.size(); i++) {
                assertTrue(before.get(i).compareTo(after.get(i)) <= 0, before + " before, then " + after);
            }
        });
    }

    @Test
    void whatIsPickedAndWhatIsLeftIsTheShelf() {
        check(random -> {
            Shelf shelf = shelf(random);
            CasesAnswer answer = ReadinessCheck.ofCases(shelf, cases(random));
            int picked = answer.cases().stream().flatMap(c -> c.needs().stream()).mapToInt(NeedAnswer::picked).sum();
            int left = answer.left().items().stream().mapToInt(Item::quantity).sum();
            assertEquals(shelf.items().stream().mapToInt(Item::quantity).sum(), picked + left);
        });
    }

    @Test
    void coveredNeedsHaveAllTheirUnitsAndNoneThatExpiresBefore() {
        check(random -> {
            Shelf shelf = shelf(random);
            for (CaseAnswer answer : ReadinessCheck.ofCases(shelf, cases(random)).cases()) {
                for (NeedAnswer need : answer.needs()) {
                    assertEquals(need.readiness().isCovered(), need.picked() == need.need().count());
                    assertTrue(need.picks().stream().map(Pick::lot)
                            .allMatch(lot -> lot.isUsableOn(answer.plannedCase().date())));
                    assertTrue(need.need().items().containsAll(need.picks().stream().map(Pick::item).toList()));
                }
            }
        });
    }

    @Test
    void lotsComeInTheOrderInWhichTheyExpire() {
        check(random -> {
            Shelf shelf = shelf(random);
            for (Item item : shelf.items()) {
                List<Lot> lots = shelf.pick(item.id(), CASE, 100).stream().map(Pick::lot).toList();
                for (int i = 1; i < lots.size(); i++) {
                    Optional<LocalDate> next = lots.get(i).expiry();
                    assertTrue(next.isEmpty() || !next.get().isBefore(lots.get(i - 1).expiry().orElseThrow()));
                }
                assertEquals(item.usableOn(CASE), lots.stream().mapToInt(Lot::quantity).sum());
            }
        });
    }
}
