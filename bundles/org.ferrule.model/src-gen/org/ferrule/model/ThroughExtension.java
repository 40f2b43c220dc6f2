/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Offset;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Through Extension</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A guide extension in place. From its collar to its tip its lumen replaces that of the outer device; proximal to the collar the outer device's lumen stays, with the push rod in it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ThroughExtension#getExtension <em>Extension</em>}</li>
 *   <li>{@link org.ferrule.model.ThroughExtension#getProtrusion <em>Protrusion</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getThroughExtension()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Through a guide extension'"
 * @generated
 */
public interface ThroughExtension extends Element
{
	/**
	 * Returns the value of the '<em><b>Extension</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The extension: id, id#lumen, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Extension</em>' attribute.
	 * @see #setExtension(String)
	 * @see org.ferrule.model.ModelPackage#getThroughExtension_Extension()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Guide extension'"
	 * @generated
	 */
	String getExtension();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ThroughExtension#getExtension <em>Extension</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Extension</em>' attribute.
	 * @see #getExtension()
	 * @generated
	 */
	void setExtension(String value);

	/**
	 * Returns the value of the '<em><b>Protrusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far its tip lies beyond the outer device's distal end; negative when it lies inside, at the end itself when not given (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Protrusion</em>' attribute.
	 * @see #setProtrusion(Offset)
	 * @see org.ferrule.model.ModelPackage#getThroughExtension_Protrusion()
	 * @model dataType="org.ferrule.model.Offset"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Tip beyond the outer device by'"
	 * @generated
	 */
	Offset getProtrusion();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ThroughExtension#getProtrusion <em>Protrusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protrusion</em>' attribute.
	 * @see #getProtrusion()
	 * @generated
	 */
	void setProtrusion(Offset value);

} // ThroughExtension
