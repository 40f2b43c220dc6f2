/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import static org.ferrule.escalation.sample.Moves.equipment;
import static org.ferrule.escalation.sample.Moves.ladder;
import static org.ferrule.escalation.sample.Moves.needing;
import static org.ferrule.escalation.sample.Moves.on;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.over;
import static org.ferrule.escalation.sample.Moves.technique;
import static org.ferrule.escalation.sample.Moves.tries;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.sample.Room;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.device.DeviceKind;
import org.junit.jupiter.api.Test;

class RequirementsTest {
    private static final Technique BALLOON = technique("balloon", Axis.PROFILE, tries(2, 0.5),
            over("balloon", DeviceKind.BALLOON_CATHETER));

    private static List<Requirement> of(CaseFile file, Ladder ladder) {
        return Requirements.of(Room.usual().instruments(), ladder, file);
    }

    @Test
    void allDevicesThatWouldPassServe() {
        Requirement balloon = of(Cases.usual(), ladder(List.of(), BALLOON)).get(0);
        assertEquals(List.of("balloon-1.0", "balloon-1.5", "balloon-2.5"),
                balloon.parts().get(0).fitting().stream().sorted().toList());
    }

    @Test
    void setupsComeFirstWithAllThatTheyNeed() {
        Technique burr = on(technique("burr", Axis.MODIFY, tries(10, 0.9), only("burr", "burr-1.25"),
                equipment("console")), "burr-wire");
        Requirement requirement = of(Cases.usual(), ladder(List.of(Moves.burrWire(4)), burr)).get(0);
        assertEquals(List.of("catheter", "trap", "wire", "burr", "console"),
                requirement.parts().stream().map(part -> part.role().id()).toList());
        assertEquals(Optional.of("console"), requirement.parts().get(4).equipment());
    }

    @Test
    void whatNobodyStatesMayHoldAndWhatIsDeniedDoesNot() {
        Technique careful = needing(BALLOON, new Need.Fact("no-dissection"));
        assertEquals(1, of(Cases.usual(), ladder(List.of(), careful)).size());
        CaseFile denied = Cases.of(Cases.system("guide-6", "wire-190"), Map.of("no-dissection", false), Cases.TIME);
        assertEquals(List.of(), of(denied, ladder(List.of(), careful)));
    }

    @Test
    void whatCannotPassIsNotAsked() {
        Technique covered = technique("covered", Axis.MODIFY, tries(1, 0.5), over("stent",
                DeviceKind.COVERED_STENT_SYSTEM));
        assertEquals(List.of(), of(Cases.usual(), ladder(List.of(), covered)));
    }
}
