/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.passage.FirstContacts;
import org.ferrule.fit.passage.FirstContacts.Meeting;
import org.ferrule.quantity.Length;

/**
 * What happens when a device goes, alone and hub to hub, through a lumen.
 *
 * @param device its number in the comparison, from 0
 * @param line the number of the lumen in the comparison, from 0
 * @param contacts where it first meets the wall
 * @param landmark of the device, from its tip; absent when it is not placed
 */
public record LumenPassage(int device, int line, FirstContacts contacts, Optional<Length> landmark) {

    public LumenPassage {
        Objects.requireNonNull(contacts, "contacts");
        Objects.requireNonNull(landmark, "landmark");
    }

    /** The station, from the landmark, at which it is proved to stop. */
    public Optional<Length> stopsAt() {
        return contacts.stop().flatMap(this::station);
    }

    /** The station, from the landmark, at which the largest part first meets the smallest lumen. */
    public Optional<Length> worstAt() {
        return contacts.worst().flatMap(this::station);
    }

    /** Whether the worst case meets the wall anywhere else than where the device is proved to stop. */
    public boolean isWorseAtItsWorst() {
        return worstAt().isPresent() && !worstAt().equals(stopsAt());
    }

    private Optional<Length> station(Meeting meeting) {
        return landmark.map(from -> meeting.at().deviceStation().minus(from));
    }

    /** Whether a figure is missing, so that a contact may come earlier than those that are known. */
    public boolean isUnknown() {
        return contacts.unknown().isPresent();
    }
}
