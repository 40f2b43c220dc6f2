/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.ShareRange;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/** What a step asks for: of devices, and of the case. */
public final class RoleWords {
    private final Phrases phrases;
    private final PlanNames names;

    RoleWords(Phrases phrases, PlanNames names) {
        this.phrases = phrases;
        this.names = names;
    }

    /** A role with all that is asked of its device, such as "small balloon: balloon catheter, 1 to 1.5 mm". */
    public String asked(Role role) {
        String who = phrases.fill("role.asked", names.role(role), String.join(", ", selection(role.selection())));
        String counted = role.count() == 1 ? who : phrases.fill("role.count", who, Integer.toString(role.count()));
        return role.onlyIfWireIsShort() ? phrases.fill("role.onlyIfShort", counted) : counted;
    }

    /** What it has to do, such as "runs on the main wire; has to come to the lesion". */
    public String duty(Role role) {
        return phrases.fill("role.duty." + role.task(), phrases.get("carrier." + role.carrier()),
                phrases.get("goal." + role.goal()));
    }

    /** What must hold before a step. */
    public String need(Need need) {
        if (need instanceof Need.Fact fact) {
            return names.fact(fact.fact());
        }
        return need instanceof Need.Vessel vessel ? phrases.fill("need.vessel", range(vessel.diameter()))
                : phrases.fill("need.branch", range(((Need.Branch) need).diameter()));
    }

    private List<String> selection(Selection selection) {
        List<String> parts = new ArrayList<>();
        selection.equipment().ifPresent(parts::add);
        if (!selection.devices().isEmpty()) {
            parts.add(or(selection.devices().stream().map(names::device).sorted().toList()));
        } else if (!selection.kinds().isEmpty()) {
            parts.add(or(selection.kinds().stream().sorted().map(DeviceKind::word).toList()));
        }
        add(parts, "role.diameter", selection.nominalDiameter());
        add(parts, "role.length", selection.nominalLength());
        add(parts, "role.wire", selection.wire());
        if (!selection.toVessel().isAny()) {
            parts.add(phrases.fill("role.toVessel", range(selection.toVessel())));
        }
        return parts;
    }

    private void add(List<String> parts, String key, LengthRange range) {
        if (!range.isAny()) {
            parts.add(phrases.fill(key, range(range)));
        }
    }

    private String or(List<String> words) {
        return words.stream().collect(Collectors.joining(phrases.get("or")));
    }

    /** A range of lengths, as it was asked for. */
    String range(LengthRange range) {
        boolean closed = range.from().isPresent() && range.to().isPresent();
        Optional<String> from = range.from().map(closed ? LengthFormat.faithful(LengthUnit.MILLIMETRE)::number
                : RoleWords::exactly);
        return range(from, range.to().map(RoleWords::exactly));
    }

    private String range(ShareRange range) {
        return range(share(range.from()), share(range.to()));
    }

    private static Optional<String> share(OptionalDouble share) {
        return share.isPresent() ? Optional.of(Amounts.share(share.getAsDouble())) : Optional.empty();
    }

    private String range(Optional<String> from, Optional<String> to) {
        if (from.isPresent() && to.isPresent()) {
            return phrases.fill("range", from.get(), to.get());
        }
        return from.map(low -> phrases.fill("range.from", low))
                .orElseGet(() -> phrases.fill("range.to", to.orElse("")));
    }

    /** A length as it was stated. */
    static String exactly(Length length) {
        return LengthFormat.faithful(LengthUnit.MILLIMETRE).format(length);
    }
}
