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

import org.ferrule.escalation.equipment.RoleFinder.Scene;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Placement;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.evidence.LengthChain;

/** Finds the equipment of moves: whether they can be made in a system, and with what of the shelf. */
public final class Outfitter {
    private final Instruments instruments;
    private final Target target;
    private final LocalDate day;
    private final Map<String, Boolean> facts;
    private final Stock stock;
    private final Stock before;

    private Outfitter(Instruments instruments, Target target, LocalDate day, Map<String, Boolean> facts,
            Stock stock, Stock before) {
        this.instruments = instruments;
        this.target = target;
        this.day = day;
        this.facts = facts;
        this.stock = stock;
        this.before = before;
    }

    /** For a case, with that stock. */
    public static Outfitter of(Instruments instruments, CaseFile file, Stock stock) {
        return new Outfitter(instruments, file.target(), file.day(), file.facts(), stock, stock);
    }

    /** The same when some of the stock was taken. */
    public Outfitter left(Stock rest) {
        return new Outfitter(instruments, target, day, facts, rest, before);
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
        return new MoveAnswer.Single(Optional.of(answer), new Lacks(stock, before, day).of(answer));
    }

    /** Whether a move can be made, and with what. */
    public MoveAnswer outfit(Move move, SystemState state) {
        List<Lack> lacks = new ArrayList<>(new Preconditions(target, facts).lacks(move));
        Casting casting = new Casting(move, state);
        move.roles().forEach(casting::cast);
        lacks.addAll(casting.lacks);
        return new MoveAnswer(move, state, lacks.isEmpty() ? casting.left() : state, casting.answers, lacks);
    }

    private RoleFinder finder() {
        return new RoleFinder(instruments, target, day, stock);
    }

    /** Finds the roles of one move, one after the other; earlier ones may change the scene of later ones. */
    private final class Casting {
        private final Move move;
        private final RoleFinder finder = finder();
        private final List<RoleAnswer> answers = new ArrayList<>();
        private final List<Lack> lacks = new ArrayList<>();
        private SystemState scene;
        private boolean wireIsShort;

        Casting(Move move, SystemState state) {
            this.move = move;
            this.scene = state;
        }

        void cast(Role role) {
            if (role.onlyIfWireIsShort() && !wireIsShort) {
                return;
            }
            Scene where = scene(role);
            Optional<Lack.Place> missing = finder.missing(role, where);
            if (missing.isPresent()) {
                lacks.add(new Lack.NotStated(role, missing.get()));
                return;
            }
            RoleAnswer answer = finder.find(role, where);
            answers.add(answer);
            lacks.addAll(new Lacks(stock, before, day).of(answer));
            answer.chosen().ifPresent(chosen -> follow(role, chosen));
        }

        private void follow(Role role, Candidate chosen) {
            wireIsShort |= chosen.suitability().crossings().stream()
                    .flatMap(c -> c.answer().in().evidence().stream()).filter(LengthChain.class::isInstance)
                    .map(LengthChain.class::cast)
                    .anyMatch(c -> c.question() == LengthChain.Question.EXCHANGE && c.margin().isNegative());
            chosen.device().map(instruments::device).filter(d -> exchanges() && isOverTheWire(d))
                    .ifPresent(catheter -> scene = scene.withMicrocatheter(catheter.id()));
        }

        private Scene scene(Role role) {
            boolean exchanged = exchanges() && isMainWire(role);
            boolean holds = placements().stream().anyMatch(p -> p.role().equals(role.id())
                    && (p.slot() == Slot.GUIDE || p.slot() == Slot.EXTENSION));
            return new Scene(scene, exchanged, scene.microcatheter().map(instruments::device), holds);
        }

        private boolean isMainWire(Role role) {
            return placements().stream().anyMatch(p -> p.slot() == Slot.MAIN_WIRE && p.role().equals(role.id()));
        }

        private boolean exchanges() {
            return move instanceof Setup setup && setup.exchangesWire();
        }

        private List<Placement> placements() {
            return move instanceof Setup setup ? setup.placements() : List.of();
        }

        /** The system that the move leaves. */
        SystemState left() {
            SystemState state = scene;
            for (Placement placement : placements()) {
                Optional<String> device = answers.stream().filter(a -> a.role().id().equals(placement.role()))
                        .findFirst().flatMap(RoleAnswer::chosen).flatMap(Candidate::device);
                state = device.isPresent() ? new Placing(target).place(state, placement, device.get()) : state;
            }
            return state;
        }
    }

    private static boolean isOverTheWire(Device device) {
        return device.kind() != DeviceKind.GUIDEWIRE
                && device.wireLumen().filter(l -> l.opening() == Lumen.Opening.HUB).isPresent();
    }
}
