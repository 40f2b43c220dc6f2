/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.page;

import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.profile.Compared.length;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.LumenSection;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.LumenLine;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

class FindingBlocksTest {
    private static final RuleSet RULES = TestRules.exact().rules();
    private static final Length END = length("100 cm");
    private static final SourceRef BORE = new SourceRef("Labels", "2", "7");
    private static final SourceRef SHAFT = new SourceRef("Sheets", "", "");

    /** A catheter whose shaft and lumen are printed in two papers. */
    private static ReadDevice catheter() {
        Contour round = new Contour.Round(Optional.of(Dimension.parse("1.5 mm")));
        Lumen lumen = new Lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, Length.ZERO, END,
                List.of(new LumenSection("bore", Length.ZERO, END, Optional.of(Dimension.parse("1.2 mm")),
                        Optional.of(Dimension.parse("1.2 mm")), BORE)));
        return ReadDevice.of(new Device("catheter", "catheter", DeviceKind.GUIDE_CATHETER, "", Optional.empty(),
                Optional.empty(), List.of(new ShaftSection("shaft", Length.ZERO, END, round, round, round, round,
                        AfterUse.UNCHANGED, false, false, SHAFT)),
                List.of(lumen), false, List.of()), RULES);
    }

    private static Set<String> sources(List<ReadDevice> devices, List<LumenLine> lines) {
        return FindingBlocks.sources(ProfileComparison.of(devices, Landmark.TIP, lines, Optional.empty(), RULES));
    }

    @Test
    void everySourceOfAFigureThatIsDrawnIsNamedOnce() {
        ReadDevice plain = ReadDevice.of(rod("plain", DeviceKind.MICROCATHETER, "100 cm", "0.9 mm").device(), RULES);
        assertEquals(Set.of(), sources(List.of(plain, plain), List.of()));
        assertEquals(Set.of("Sheets", "Labels, rev. 2, p. 7"), sources(List.of(catheter(), plain), List.of()));
        LumenLine line = new LumenLine(catheter(), catheter().device().lumens().get(0));
        assertEquals(Set.of("Labels, rev. 2, p. 7"), sources(List.of(plain, plain), List.of(line)));
    }
}
