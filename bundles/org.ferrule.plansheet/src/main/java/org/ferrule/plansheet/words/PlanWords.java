/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.shelf.stock.Shelf;

/** Says plans. One of these serves all plans that are made with its ladder, its devices and its shelf. */
public final class PlanWords {
    private final Phrases phrases;
    private final PlanNames names;
    private final RoleWords roles;
    private final RungWords rungs;
    private final FitWords fits;
    private final EquipmentWords equipment;
    private final LackWords lacks;
    private final LeftOutWords leftOut;
    private final StatusWords status;
    private final BudgetWords budgets;
    private final AssumptionWords assumptions;
    private final WhyWords why;

    private PlanWords(Phrases phrases, ReasonWords reasons, PlanNames names, Amounts amounts) {
        this.phrases = phrases;
        this.names = names;
        this.roles = new RoleWords(phrases, names);
        this.rungs = new RungWords(phrases, names, amounts);
        this.fits = new FitWords(phrases, reasons);
        this.equipment = new EquipmentWords(phrases, names, fits);
        this.lacks = new LackWords(phrases, names, roles, fits);
        this.leftOut = new LeftOutWords(phrases, names, lacks);
        this.status = new StatusWords(phrases, names, equipment, lacks);
        this.budgets = new BudgetWords(phrases, amounts);
        this.assumptions = new AssumptionWords(phrases, amounts);
        this.why = new WhyWords(phrases, names, amounts);
    }

    /**
     * English words.
     *
     * @param ladder names techniques, set-ups and facts
     * @param instruments name devices
     * @param shelf names items; what is left of them does not matter
     * @param units of clearances and diameters
     * @param currency of prices; empty when nobody says
     */
    public static PlanWords english(Ladder ladder, Instruments instruments, Shelf shelf, UnitPreferences units,
            String currency) {
        Phrases phrases = Phrases.beside(PlanWords.class, "plan");
        return new PlanWords(phrases, ReasonWords.english(units), new PlanNames(ladder, instruments, shelf),
                new Amounts(phrases, currency));
    }

    /** The templates in use. */
    public Phrases phrases() {
        return phrases;
    }

    /** What things are called. */
    public PlanNames names() {
        return names;
    }

    /** What is asked of devices and of the case. */
    public RoleWords roles() {
        return roles;
    }

    /** Steps. */
    public RungWords rungs() {
        return rungs;
    }

    /** Verdicts and clearances. */
    public FitWords fits() {
        return fits;
    }

    /** What was chosen, and where it lies. */
    public EquipmentWords equipment() {
        return equipment;
    }

    /** Why something cannot be done. */
    public LackWords lacks() {
        return lacks;
    }

    /** What is not in the plan, and what would change that. */
    public LeftOutWords leftOut() {
        return leftOut;
    }

    /** Wire, what must be at hand, what is to be delivered, stop rules, the log. */
    public StatusWords status() {
        return status;
    }

    /** What is used up. */
    public BudgetWords budgets() {
        return budgets;
    }

    /** What the order rests on. */
    public AssumptionWords assumptions() {
        return assumptions;
    }

    /** What the order hangs on. */
    public WhyWords why() {
        return why;
    }
}
