/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.RuleSet;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;

/**
 * A case with the documents that it refers to.
 *
 * @param file the case
 * @param libraries in the order of the case
 * @param rules its rule set
 * @param techniques its techniques
 * @param shelf its shelf; absent where it names none
 */
public record OpenCase(CaseDocument file, List<LibraryReader> libraries, RuleSet rules, TechniqueLibrary techniques,
        Optional<ShelfDocument> shelf) {
    public OpenCase {
        Objects.requireNonNull(file, "file");
        libraries = List.copyOf(libraries);
        Objects.requireNonNull(rules, "rules");
        Objects.requireNonNull(techniques, "techniques");
        Objects.requireNonNull(shelf, "shelf");
    }

    /**
     * Makes the case ready to be planned, once.
     *
     * @param checks of the fit solver
     * @param today the day of a case that does not say on which day it is
     * @throws org.ferrule.fit.rules.RuleSetException naming a rule that lacks something
     */
    public AssembledCase assemble(List<FitCheck> checks, LocalDate today) {
        return new CaseAssembler(checks).assemble(file, Catalogue.of(libraries), RuleTranslator.translate(rules),
                techniques, shelf, today);
    }
}
