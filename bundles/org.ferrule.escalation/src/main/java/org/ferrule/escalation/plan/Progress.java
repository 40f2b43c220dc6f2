/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.Placing;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Placement;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Shelf;
import org.ferrule.shelf.stock.StockException;
import org.ferrule.shelf.stock.Use;

/**
 * Where a case stands after its log: what is in place, what was tried how often, what is left on the shelf.
 *
 * @param system what is in place now
 * @param setups ids of the set-ups that are in place
 * @param failedSetups ids of the set-ups that were tried and failed
 * @param tries how often each technique was tried and failed
 * @param crossed whether the device is across
 * @param stock what is left
 * @param problems what of the log does not agree with the ladder or the shelf
 */
public record Progress(SystemState system, Set<String> setups, Set<String> failedSetups, Map<String, Integer> tries,
        boolean crossed, Stock stock, List<LogProblem> problems) {

    /**
     * Something in the log that does not agree with the ladder or the shelf. It is told and left alone.
     *
     * @param entry its place in the log, from 0
     * @param kind what it is
     * @param detail names what is meant
     */
    public record LogProblem(int entry, Kind kind, String detail) {

        /** What may be wrong with an entry. */
        public enum Kind {
            UNKNOWN_MOVE, UNKNOWN_ITEM, NOT_ON_SHELF, NO_DEVICE_FOR_ROLE
        }
    }

    public Progress {
        setups = Set.copyOf(setups);
        failedSetups = Set.copyOf(failedSetups);
        tries = Map.copyOf(tries);
        problems = List.copyOf(problems);
    }

    /** Follows the log of a case, from the set-ups that its system shows to be in place already. */
    public static Progress of(CaseFile file, Ladder ladder, Stock stock, Instruments instruments) {
        Replay replay = new Replay(file, ladder, stock);
        ladder.setups().stream().filter(s -> replay.placing.isInPlace(s, file.system(), instruments))
                .forEach(s -> replay.setups.add(s.id()));
        for (int i = 0; i < file.log().size(); i++) {
            replay.follow(i, file.log().get(i));
        }
        return replay.progress();
    }

    /** How often a technique was tried and failed. */
    public int triesOf(String technique) {
        return tries.getOrDefault(technique, 0);
    }

    private static final class Replay {
        private final Ladder ladder;
        private final Placing placing;
        private final Set<String> setups = new LinkedHashSet<>();
        private final Set<String> failedSetups = new LinkedHashSet<>();
        private final Map<String, Integer> tries = new HashMap<>();
        private final List<LogProblem> problems = new ArrayList<>();
        private SystemState system;
        private boolean crossed;
        private Stock stock;

        Replay(CaseFile file, Ladder ladder, Stock stock) {
            this.ladder = ladder;
            this.placing = new Placing(file.target());
            this.system = file.system();
            this.stock = stock;
        }

        void follow(int entry, Attempt attempt) {
            attempt.units().forEach(unit -> take(entry, unit));
            Optional<Setup> setup = ladder.setups().stream().filter(s -> s.id().equals(attempt.move())).findFirst();
            if (setup.isPresent()) {
                followSetup(entry, setup.get(), attempt);
            } else if (ladder.techniques().stream().anyMatch(t -> t.id().equals(attempt.move()))) {
                crossed |= attempt.outcome() == Outcome.CROSSED;
                tries.merge(attempt.move(), attempt.outcome() == Outcome.FAILED ? 1 : 0, Integer::sum);
            } else {
                problems.add(new LogProblem(entry, LogProblem.Kind.UNKNOWN_MOVE, attempt.move()));
            }
        }

        private void followSetup(int entry, Setup setup, Attempt attempt) {
            if (attempt.outcome() != Outcome.CROSSED) {
                failedSetups.add(setup.id());
                return;
            }
            setups.add(setup.id());
            failedSetups.remove(setup.id());
            for (Placement placement : setup.placements()) {
                Optional<String> device = attempt.units().stream().filter(u -> u.role().equals(placement.role()))
                        .findFirst().flatMap(u -> stock.shelf().item(u.item())).flatMap(Item::device);
                device.ifPresentOrElse(d -> system = placing.place(system, placement, d),
                        () -> problems.add(new LogProblem(entry, LogProblem.Kind.NO_DEVICE_FOR_ROLE,
                                placement.role())));
            }
        }

        private void take(int entry, Attempt.UsedUnit unit) {
            Optional<Item> item = stock.shelf().item(unit.item());
            if (item.isEmpty()) {
                problems.add(new LogProblem(entry, LogProblem.Kind.UNKNOWN_ITEM, unit.item()));
                return;
            }
            try {
                stock = stock.with(without(stock.shelf(), item.get(), unit.lot()));
            } catch (StockException e) {
                problems.add(new LogProblem(entry, LogProblem.Kind.NOT_ON_SHELF, e.getMessage()));
            }
        }

        private static Shelf without(Shelf shelf, Item item, String lot) throws StockException {
            return shelf.take(item.lots().stream().filter(l -> l.lot().equals(lot)).findFirst()
                    .map(l -> new Use(item.id(), l.lot(), l.serial(), Optional.of(l.location()), 1))
                    .orElseGet(() -> new Use(item.id(), lot, Optional.empty(), Optional.empty(), 1)));
        }

        Progress progress() {
            return new Progress(system, setups, failedSetups, tries, crossed, stock, problems);
        }
    }
}
