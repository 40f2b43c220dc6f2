/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Access</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where the system enters the body.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Access#getSite <em>Site</em>}</li>
 *   <li>{@link org.ferrule.model.Access#getVessel <em>Vessel</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getAccess()
 * @model
 * @generated
 */
public interface Access extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Site</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The vessel, in words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Site</em>' attribute.
	 * @see #setSite(String)
	 * @see org.ferrule.model.ModelPackage#getAccess_Site()
	 * @model
	 * @generated
	 */
	String getSite();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Access#getSite <em>Site</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Site</em>' attribute.
	 * @see #getSite()
	 * @generated
	 */
	void setSite(String value);

	/**
	 * Returns the value of the '<em><b>Vessel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its lumen diameter (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Vessel</em>' attribute.
	 * @see #setVessel(Dimension)
	 * @see org.ferrule.model.ModelPackage#getAccess_Vessel()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='VESSEL_DIAMETER' label='Vessel diameter'"
	 * @generated
	 */
	Dimension getVessel();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Access#getVessel <em>Vessel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vessel</em>' attribute.
	 * @see #getVessel()
	 * @generated
	 */
	void setVessel(Dimension value);

} // Access
