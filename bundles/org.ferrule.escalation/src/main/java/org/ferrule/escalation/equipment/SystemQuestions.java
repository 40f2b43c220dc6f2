/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.Role;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.quantity.Length;

/**
 * The questions that a system asks about a device that comes in: through the guide catheter with all that lies in it,
 * over the wire that it runs on, through the sheath, or through the catheter that a wire is exchanged in.
 */
final class SystemQuestions {
    /** How far a wire lies beyond the lesion, so that it is beside a device all the way: more than any device needs. */
    private static final Length WIRE_AHEAD = Length.ofMm(30);

    private final Instruments instruments;
    private final Target target;
    private final SystemState state;

    SystemQuestions(Instruments instruments, Target target, SystemState state) {
        this.instruments = instruments;
        this.target = target;
        this.state = state;
    }

    /** What is not stated, but must be known before it can be asked whether a device can play a role. */
    Optional<Lack.Place> missing(Role role, Device device, boolean throughCatheter, Optional<Device> catheter) {
        if (device.kind() == DeviceKind.GUIDE_CATHETER) {
            return state.sheath().isPresent() ? Optional.empty() : Optional.of(Lack.Place.SHEATH);
        }
        if (throughCatheter) {
            return catheter.isPresent() ? Optional.empty() : Optional.of(Lack.Place.CATHETER);
        }
        if (role.carrier() == Carrier.MAIN_WIRE && state.mainWire().isEmpty()) {
            return Optional.of(Lack.Place.MAIN_WIRE);
        }
        if (role.carrier() == Carrier.SECOND_WIRE && state.secondWire().isEmpty()) {
            return Optional.of(Lack.Place.SECOND_WIRE);
        }
        if (role.goal() == Goal.LESION && target.reach().isEmpty()) {
            return Optional.of(Lack.Place.REACH);
        }
        return role.goal() == Goal.BRANCH && target.branchReach().isEmpty() ? Optional.of(Lack.Place.BRANCH_REACH)
                : Optional.empty();
    }

    /** Asks all of them; nothing that they need may be missing. */
    List<Crossing> ask(Role role, Device device, Optional<Device> catheter) {
        if (device.kind() == DeviceKind.GUIDE_CATHETER) {
            Device sheath = instruments.device(state.sheath().orElseThrow());
            return List.of(crossing(Crossing.Way.SHEATH, inside(sheath, instruments.read(device))));
        }
        if (catheter.isPresent()) {
            return List.of(crossing(Crossing.Way.CATHETER, inside(catheter.get(), instruments.read(device))));
        }
        List<Crossing> crossings = new ArrayList<>();
        Optional<Device> wire = wire(role.carrier());
        ReadDevice moving = wire.map(w -> instruments.over(device, w)).orElseGet(() -> instruments.read(device));
        crossings.add(crossing(Crossing.Way.SYSTEM, throughSystem(role, moving)));
        wire.flatMap(w -> overWire(device, w)).ifPresent(q -> crossings.add(crossing(Crossing.Way.WIRE, q)));
        return crossings;
    }

    /** The lumen in which a device lies that comes no farther than the guide: that of an extension in it first. */
    Optional<Filling> filling(Device balloon) {
        Device around = instruments.device(state.extension().map(SystemState.PlacedExtension::device)
                .orElse(state.guide()));
        return around.mainLumen().map(lumen -> Fillings.of(balloon, Bore.widest(instruments.read(around), lumen)));
    }

    private Crossing crossing(Crossing.Way way, FitQuestion question) {
        return new Crossing(way, question, instruments.answer(question));
    }

    private FitQuestion inside(Device outer, ReadDevice inner) {
        return new FitQuestion(instruments.read(outer), mainLumen(outer), inner, Direction.TIP_FIRST,
                Optional.empty(), instruments.rules());
    }

    private Optional<FitQuestion> overWire(Device device, Device wire) {
        return device.wireLumen().map(lumen -> new FitQuestion(instruments.read(device), lumen,
                instruments.read(wire), Direction.OVER_WIRE_TAIL, Optional.empty(), instruments.rules()));
    }

    private FitQuestion throughSystem(Role role, ReadDevice moving) {
        Device guide = instruments.device(state.guide());
        boolean isExtension = moving.device().kind() == DeviceKind.GUIDE_EXTENSION;
        Optional<Through> through = isExtension ? Optional.empty() : state.extension().map(this::through);
        Length ahead = through.map(Through::protrusion).orElse(Length.ZERO).max(Length.ZERO);
        Conditions conditions = new Conditions(occupants(role), through, target.bends(), false);
        return new FitQuestion(instruments.read(guide), mainLumen(guide), moving, Direction.TIP_FIRST,
                Optional.of(reach(role.goal()).minus(ahead).max(Length.ZERO)), conditions, instruments.rules());
    }

    private Length reach(Goal goal) {
        return switch (goal) {
            case LESION -> target.reach().orElseThrow();
            case BRANCH -> target.branchReach().orElseThrow();
            case GUIDE_TIP, IN_GUIDE -> Length.ZERO;
        };
    }

    private Through through(SystemState.PlacedExtension placed) {
        Device extension = instruments.device(placed.device());
        ReadDevice read = state.mainWire().map(instruments::device).map(w -> instruments.over(extension, w))
                .orElseGet(() -> instruments.read(extension));
        return new Through(read, mainLumen(extension), placed.protrusion());
    }

    /** What lies beside a device: all that it does not run on. A microcatheter comes out before its wire is used. */
    private List<Occupant> occupants(Role role) {
        List<Occupant> inside = new ArrayList<>();
        Length farthest = target.reach().orElse(Length.ZERO).plus(WIRE_AHEAD);
        if (role.carrier() != Carrier.MAIN_WIRE) {
            Optional<Device> main = wire(Carrier.MAIN_WIRE);
            Optional<Device> micro = state.microcatheter().map(instruments::device);
            micro.map(m -> main.map(w -> instruments.over(m, w)).orElseGet(() -> instruments.read(m)))
                    .or(() -> main.map(instruments::read))
                    .ifPresent(device -> inside.add(new Occupant(device, farthest, false)));
        }
        if (role.carrier() != Carrier.SECOND_WIRE) {
            state.anchor().map(instruments::device).map(this::overSecondWire)
                    .map(anchor -> new Occupant(anchor, target.branchReach().orElse(Length.ZERO), true))
                    .or(() -> wire(Carrier.SECOND_WIRE)
                            .map(w -> new Occupant(instruments.read(w), farthest, false)))
                    .ifPresent(inside::add);
        }
        return inside;
    }

    private ReadDevice overSecondWire(Device anchor) {
        return wire(Carrier.SECOND_WIRE).map(w -> instruments.over(anchor, w))
                .orElseGet(() -> instruments.read(anchor));
    }

    private Optional<Device> wire(Carrier carrier) {
        return switch (carrier) {
            case MAIN_WIRE -> state.mainWire().map(instruments::device);
            case SECOND_WIRE -> state.secondWire().map(instruments::device);
            case NONE -> Optional.empty();
        };
    }

    private static Lumen mainLumen(Device device) {
        return device.mainLumen().orElseThrow(() -> new IllegalArgumentException(
                "\"" + device.id() + "\" has no lumen that a device could come through"));
    }
}
