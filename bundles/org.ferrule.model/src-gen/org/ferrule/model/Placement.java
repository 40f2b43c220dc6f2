/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Placement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A device that a set-up leaves in the system.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Placement#getSlot <em>Slot</em>}</li>
 *   <li>{@link org.ferrule.model.Placement#getRole <em>Role</em>}</li>
 *   <li>{@link org.ferrule.model.Placement#getProtrusion <em>Protrusion</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getPlacement()
 * @model
 * @generated
 */
public interface Placement extends Element
{
	/**
	 * Returns the value of the '<em><b>Slot</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.SystemSlot}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it lies.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Slot</em>' attribute.
	 * @see org.ferrule.model.SystemSlot
	 * @see #isSetSlot()
	 * @see #unsetSlot()
	 * @see #setSlot(SystemSlot)
	 * @see org.ferrule.model.ModelPackage#getPlacement_Slot()
	 * @model unsettable="true" required="true"
	 * @generated
	 */
	SystemSlot getSlot();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Placement#getSlot <em>Slot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slot</em>' attribute.
	 * @see org.ferrule.model.SystemSlot
	 * @see #isSetSlot()
	 * @see #unsetSlot()
	 * @see #getSlot()
	 * @generated
	 */
	void setSlot(SystemSlot value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Placement#getSlot <em>Slot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetSlot()
	 * @see #getSlot()
	 * @see #setSlot(SystemSlot)
	 * @generated
	 */
	void unsetSlot();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Placement#getSlot <em>Slot</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Slot</em>' attribute is set.
	 * @see #unsetSlot()
	 * @see #getSlot()
	 * @see #setSlot(SystemSlot)
	 * @generated
	 */
	boolean isSetSlot();

	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the role of the same set-up whose device it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see #setRole(String)
	 * @see org.ferrule.model.ModelPackage#getPlacement_Role()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='Role'"
	 * @generated
	 */
	String getRole();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Placement#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see #getRole()
	 * @generated
	 */
	void setRole(String value);

	/**
	 * Returns the value of the '<em><b>Protrusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far an extension is advanced beyond the guide's tip at most (mm or cm); given for an extension only.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Protrusion</em>' attribute.
	 * @see #setProtrusion(Dimension)
	 * @see org.ferrule.model.ModelPackage#getPlacement_Protrusion()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='Tip beyond the guide by at most'"
	 * @generated
	 */
	Dimension getProtrusion();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Placement#getProtrusion <em>Protrusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Protrusion</em>' attribute.
	 * @see #getProtrusion()
	 * @generated
	 */
	void setProtrusion(Dimension value);

} // Placement
