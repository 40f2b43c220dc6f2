/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.equipment.RoleFinder.Scene;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Placement;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.evidence.LengthChain;

/**
 * Finds the roles of one move, one after the other. The catheter that a wire is exchanged in is part of the scene of the
 * roles after it; so when one of these has nobody, the next catheter is tried.
 */
final class Casting {
    private final Move move;
    private final Instruments instruments;
    private final RoleFinder finder;
    private final Lacks lacks;
    private final Placing placing;

    Casting(Move move, Instruments instruments, RoleFinder finder, Lacks lacks, Placing placing) {
        this.move = move;
        this.instruments = instruments;
        this.finder = finder;
        this.lacks = lacks;
        this.placing = placing;
    }

    /** All roles, beginning in that system. */
    Cast cast(SystemState state) {
        return cast(0, Cast.none(state));
    }

    private Cast cast(int next, Cast soFar) {
        if (next == move.roles().size()) {
            return soFar;
        }
        Role role = move.roles().get(next);
        if (role.onlyIfWireIsShort() && !soFar.wireIsShort()) {
            return cast(next + 1, soFar);
        }
        Scene scene = scene(role, soFar.scene());
        Optional<Lack.Place> missing = finder.missing(role, scene);
        if (missing.isPresent()) {
            return cast(next + 1, soFar.lacking(new Lack.NotStated(role, missing.get())));
        }
        RoleAnswer answer = finder.find(role, scene);
        return answer.chosen().isEmpty() ? cast(next + 1, soFar.with(answer, lacks.of(answer)))
                : castBest(next, soFar, answer);
    }

    /** With the best candidate; with a worse one only where that makes the rest possible. */
    private Cast castBest(int next, Cast soFar, RoleAnswer answer) {
        Cast best = follow(next, soFar, answer);
        if (best.lacks().isEmpty() || !isCatheter(answer.chosen().orElseThrow())) {
            return best;
        }
        return answer.ranked().stream().skip(1).filter(Candidate::isReady)
                .map(other -> follow(next, soFar, answer.preferring(other)))
                .filter(cast -> cast.lacks().isEmpty()).findFirst().orElse(best);
    }

    private Cast follow(int next, Cast soFar, RoleAnswer answer) {
        Candidate chosen = answer.chosen().orElseThrow();
        Cast after = soFar.with(answer, List.of());
        if (isShort(chosen)) {
            after = after.onShortWire();
        }
        if (isCatheter(chosen)) {
            after = after.in(after.scene().withMicrocatheter(chosen.device().orElseThrow()));
        }
        return cast(next + 1, after);
    }

    private static boolean isShort(Candidate chosen) {
        return chosen.suitability().crossings().stream().flatMap(c -> c.answer().in().evidence().stream())
                .filter(LengthChain.class::isInstance).map(LengthChain.class::cast)
                .anyMatch(c -> c.question() == LengthChain.Question.EXCHANGE && c.margin().isNegative());
    }

    private boolean isCatheter(Candidate chosen) {
        return exchanges() && chosen.device().map(instruments::device).filter(Casting::isOverTheWire).isPresent();
    }

    private static boolean isOverTheWire(Device device) {
        return device.kind() != DeviceKind.GUIDEWIRE
                && device.wireLumen().filter(l -> l.opening() == Lumen.Opening.HUB).isPresent();
    }

    private Scene scene(Role role, SystemState system) {
        boolean exchanged = exchanges() && leaves(role, Slot.MAIN_WIRE);
        return new Scene(system, exchanged, system.microcatheter().map(instruments::device),
                leaves(role, Slot.GUIDE) || leaves(role, Slot.EXTENSION));
    }

    private boolean leaves(Role role, Slot slot) {
        return placements().stream().anyMatch(p -> p.slot() == slot && p.role().equals(role.id()));
    }

    private boolean exchanges() {
        return move instanceof Setup setup && setup.exchangesWire();
    }

    private List<Placement> placements() {
        return move instanceof Setup setup ? setup.placements() : List.of();
    }

    /** The system that the move leaves with that cast; what was drawn back is there again. */
    SystemState left(SystemState before, Cast cast) {
        SystemState state = before;
        for (Placement placement : placements()) {
            Optional<String> device = cast.answers().stream().filter(a -> a.role().id().equals(placement.role()))
                    .findFirst().flatMap(RoleAnswer::chosen).flatMap(Candidate::device);
            state = device.isPresent() ? placing.place(state, placement, device.get()) : state;
        }
        return state;
    }
}
