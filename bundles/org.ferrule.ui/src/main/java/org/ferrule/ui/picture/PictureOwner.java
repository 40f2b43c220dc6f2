/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.util.Optional;

import org.eclipse.core.resources.IContainer;
import org.ferrule.picture.Caption;

/**
 * What whoever shows a picture knows about it when it leaves the program.
 *
 * @param caption what it shows, its sources, its rule set; the date is added
 * @param folder where a file is offered to be saved
 */
public record PictureOwner(Caption caption, Optional<IContainer> folder) {

    /** Nothing is known but what the picture itself says. */
    public static final PictureOwner UNKNOWN = new PictureOwner(Caption.NONE, Optional.empty());

    /** An owner with a caption, whose files go to a folder. */
    public static PictureOwner of(Caption caption, IContainer folder) {
        return new PictureOwner(caption, Optional.ofNullable(folder));
    }
}
