/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.chart.look.Scheme;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.picture.Picture;
import org.ferrule.plansheet.drawing.SystemDrawing;
import org.ferrule.plansheet.words.PlanWords;

/** The system in place as a set-up leaves it. */
public class SetupExample extends ExampleCase {

    private static final double LETTERING = 1;

    @Override
    Picture draw(Plan plan, PlanWords words, double widthMm) throws CoreException {
        Rung setup = plan.rungs().stream().filter(Rung::isSetup).findFirst()
                .orElseThrow(() -> new CoreException(Status.error("The plan of the demo has no set-up")));
        return SystemDrawing.change(setup.equipment().before(), setup.equipment().after(), words, Scheme.LIGHT,
                widthMm, LETTERING);
    }
}
