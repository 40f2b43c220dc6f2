/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.RoleFinder.Scene;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Slot;

/** Finds the equipment of moves: whether they can be made in a system, and with what of the shelf. */
public final class Outfitter {
    private final Instruments instruments;
    private final Target target;
    private final LocalDate day;
    private final Map<String, Boolean> facts;
    private final Stock stock;
    private final Stock before;
    private final DrawnBack drawnBack;

    private Outfitter(Instruments instruments, Target target, LocalDate day, Map<String, Boolean> facts,
            Stock stock, Stock before, DrawnBack drawnBack) {
        this.instruments = instruments;
        this.target = target;
        this.day = day;
        this.facts = facts;
        this.stock = stock;
        this.before = before;
        this.drawnBack = drawnBack;
    }

    /** For a case and the moves of a ladder, with that stock. */
    public static Outfitter of(Instruments instruments, Ladder ladder, CaseFile file, Stock stock) {
        return new Outfitter(instruments, file.target(), file.day(), file.facts(), stock, stock,
                new DrawnBack(ladder));
    }

    /** The same when some of the stock was taken. */
    public Outfitter left(Stock rest) {
        return new Outfitter(instruments, target, day, facts, rest, before, drawnBack);
    }

    /** What is there now. */
    public Stock stock() {
        return stock;
    }

    /** Who can play a role that no move asks for. */
    public MoveAnswer.Single role(Role role, SystemState state) {
        RoleFinder finder = finder();
        Scene scene = new Scene(state, false, Optional.empty(), false);
        Optional<Lack.Place> missing = finder.missing(role, scene);
        if (missing.isPresent()) {
            return new MoveAnswer.Single(Optional.empty(), List.of(new Lack.NotStated(role, missing.get())));
        }
        RoleAnswer answer = finder.find(role, scene);
        return new MoveAnswer.Single(Optional.of(answer), lacks().of(answer));
    }

    /**
     * Whether a move can be made, and with what; where that is needed, while something that it does not need is drawn
     * back. When it cannot, the answer is that of the system as it is.
     */
    public MoveAnswer outfit(Move move, SystemState state) {
        List<Lack> unmet = new Preconditions(target, facts).lacks(move);
        MoveAnswer asItIs = null;
        for (Set<Slot> back : drawnBack.choices(move, state)) {
            MoveAnswer answer = outfit(move, state, back, unmet);
            if (answer.isPossible()) {
                return answer;
            }
            asItIs = asItIs == null ? answer : asItIs;
        }
        return asItIs;
    }

    private MoveAnswer outfit(Move move, SystemState state, Set<Slot> back, List<Lack> unmet) {
        Casting casting = new Casting(move, instruments, finder(), lacks(), new Placing(target));
        Cast cast = casting.cast(DrawnBack.without(back, state));
        List<Lack> lacks = new ArrayList<>(unmet);
        lacks.addAll(cast.lacks());
        return new MoveAnswer(move, state, lacks.isEmpty() ? casting.left(state, cast) : state, back, cast.answers(),
                lacks);
    }

    private RoleFinder finder() {
        return new RoleFinder(instruments, target, day, stock);
    }

    private Lacks lacks() {
        return new Lacks(stock, before, day);
    }
}
