/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Role;
import org.ferrule.quantity.Length;

/** Why a technique or a set-up cannot be done as things stand. */
public sealed interface Lack {

    /**
     * No library describes anything that could play the role, and the shelf has no such equipment.
     *
     * @param role the role
     */
    record NothingMatches(Role role) implements Lack {
    }

    /**
     * What would serve is not on the shelf.
     *
     * @param role the role
     * @param wouldServe ids of devices that would pass, best first; empty for equipment
     */
    record NotOnShelf(Role role, List<String> wouldServe) implements Lack {
        public NotOnShelf {
            wouldServe = List.copyOf(wouldServe);
        }
    }

    /**
     * What would serve has expired.
     *
     * @param role the role
     * @param item id on the shelf
     * @param expiry the latest of its expired units
     */
    record Expired(Role role, String item, LocalDate expiry) implements Lack {
    }

    /**
     * Earlier steps have taken what would serve.
     *
     * @param role the role
     * @param item id on the shelf
     */
    record UsedUp(Role role, String item) implements Lack {
    }

    /**
     * What is on the shelf does not pass, or nobody can tell.
     *
     * @param role the role
     * @param nearest the candidate that comes nearest
     */
    record DoesNotPass(Role role, Candidate nearest) implements Lack {
    }

    /**
     * Nobody says which device is in a place that matters.
     *
     * @param role the role
     * @param place what is not said
     */
    record NotStated(Role role, Place place) implements Lack {
    }

    /** Places of the system that may not be stated. */
    enum Place {
        SHEATH, MAIN_WIRE, SECOND_WIRE, REACH, BRANCH_REACH, CATHETER
    }

    /**
     * A statement is missing, or it was denied.
     *
     * @param fact its id
     * @param denied whether someone said that it does not hold
     */
    record FactMissing(String fact, boolean denied) implements Lack {
    }

    /**
     * The vessel, or the branch, is not of the size that is asked for.
     *
     * @param branch whether the branch is meant
     * @param asked the range
     * @param stated absent when nobody says
     */
    record WrongSize(boolean branch, LengthRange asked, Optional<Length> stated) implements Lack {
        public WrongSize {
            Objects.requireNonNull(asked, "asked");
            Objects.requireNonNull(stated, "stated");
        }
    }

    /**
     * A set-up that it needs cannot be done.
     *
     * @param setup its id
     */
    record SetupImpossible(String setup) implements Lack {
    }
}
