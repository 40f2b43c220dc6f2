/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.help;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.chart.drawing.EvidenceDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Question;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.picture.Picture;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.ui.Services;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;
import org.ferrule.ui.picture.PictureUnits;
import org.ferrule.ui.preferences.UnitPreferences;

/** How far a balloon of the demo reaches through a guide: lengths that add up, with the allowance of the rules. */
public class ReachPicture implements HelpPicture {

    private static final double HEIGHT_MM = 46;
    private static final Length REACH = Length.of("12", LengthUnit.CENTIMETRE);

    @Override
    public Picture draw(double widthMm) throws CoreException {
        FitSolver solver = FitSolver.with(Extensions.ofPlatform().checks(), List.of());
        LengthChain chain = solver.answer(question()).in().evidence().stream()
                .filter(LengthChain.class::isInstance).map(LengthChain.class::cast)
                .filter(found -> found.question() == Question.REACH).findFirst()
                .orElseThrow(() -> new CoreException(Status.error("The demo tells nothing of a reach")));
        return new EvidenceDrawing(ReasonWords.english(PictureUnits.of(Services.get(UnitPreferences.class))))
                .of(chain, widthMm, HEIGHT_MM);
    }

    private static FitQuestion question() throws CoreException {
        RuleSet rules = HelpDemo.rules();
        Catalogue devices = HelpDemo.devices("access-and-guides.devices.json", "balloons.devices.json");
        Device guide = devices.device("brn-guide-6fr-right-100").device();
        Lumen lumen = guide.mainLumen()
                .orElseThrow(() -> new CoreException(Status.error("The guide of the demo has no lumen")));
        return new FitQuestion(ReadDevice.of(guide, rules), lumen,
                ReadDevice.of(devices.device("dun-sc-250-15").device(), rules), Direction.TIP_FIRST,
                Optional.of(REACH), Conditions.NONE, rules);
    }
}
