/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.CoreException;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.RuleSet;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.picture.Picture;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.help.HelpDemo;
import org.ferrule.ui.help.HelpPicture;

/**
 * A case of the demo with a few of its techniques and what they need: a plan with all of them takes longer than a page of
 * the help should.
 */
abstract class ExampleCase implements HelpPicture {

    private static final List<String> LIBRARIES = List.of("access-and-guides.devices.json", "balloons.devices.json",
            "extensions-and-microcatheters.devices.json", "wires.devices.json");
    private static final Set<String> TECHNIQUES = Set.of("small-balloon", "balloon-through-extension", "stop");
    private static final String SETUP = "extension";

    @Override
    public Picture draw(double widthMm) throws CoreException {
        CaseDocument file = HelpDemo.document("case-calcified-bend-6-fr.case.json", CaseDocument.class);
        ShelfDocument shelf = HelpDemo.document(file.getShelf(), ShelfDocument.class);
        AssembledCase assembled = new OpenCase(file, HelpDemo.libraries(LIBRARIES),
                HelpDemo.document(file.getRules(), RuleSet.class), techniques(file), Optional.of(shelf))
                .assemble(Extensions.ofPlatform().checks(), LocalDate.now());
        return draw(assembled.plan(), PlanWords.english(assembled.ladder(), assembled.instruments(),
                assembled.stock().shelf(), ShownUnits.first(), shelf.getCurrency()), widthMm);
    }

    private static TechniqueLibrary techniques(CaseDocument file) throws CoreException {
        TechniqueLibrary library = HelpDemo.document(file.getTechniques(), TechniqueLibrary.class);
        library.getTechniques().removeIf(technique -> !TECHNIQUES.contains(technique.getId()));
        library.getSetups().removeIf(setup -> !SETUP.equals(setup.getId()));
        library.getBailOut().clear();
        return library;
    }

    /** Draws something of the plan. */
    abstract Picture draw(Plan plan, PlanWords words, double widthMm) throws CoreException;
}
