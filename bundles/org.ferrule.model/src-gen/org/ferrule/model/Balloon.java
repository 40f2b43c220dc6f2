/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Pressure;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Balloon</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A balloon.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Balloon#getSection <em>Section</em>}</li>
 *   <li>{@link org.ferrule.model.Balloon#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.Balloon#getLength <em>Length</em>}</li>
 *   <li>{@link org.ferrule.model.Balloon#getNominalPressure <em>Nominal Pressure</em>}</li>
 *   <li>{@link org.ferrule.model.Balloon#getRatedBurstPressure <em>Rated Burst Pressure</em>}</li>
 *   <li>{@link org.ferrule.model.Balloon#getCompliance <em>Compliance</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getBalloon()
 * @model
 * @generated
 */
public interface Balloon extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the shaft section that is the folded balloon; its od is the crossing profile, its odAfter the re-wrapped profile.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Section</em>' attribute.
	 * @see #setSection(String)
	 * @see org.ferrule.model.ModelPackage#getBalloon_Section()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='ShaftSection' label='Folded in section'"
	 * @generated
	 */
	String getSection();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Balloon#getSection <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Section</em>' attribute.
	 * @see #getSection()
	 * @generated
	 */
	void setSection(String value);

	/**
	 * Returns the value of the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The diameter at the nominal pressure (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getBalloon_Diameter()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='BALLOON_DIAMETER'"
	 * @generated
	 */
	Dimension getDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Balloon#getDiameter <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diameter</em>' attribute.
	 * @see #getDiameter()
	 * @generated
	 */
	void setDiameter(Dimension value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The length of the balloon's working part (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Dimension)
	 * @see org.ferrule.model.ModelPackage#getBalloon_Length()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH'"
	 * @generated
	 */
	Dimension getLength();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Balloon#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Dimension value);

	/**
	 * Returns the value of the '<em><b>Nominal Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The pressure at which the balloon has its nominal diameter (atm, bar, kPa, MPa, psi or mmHg).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Nominal Pressure</em>' attribute.
	 * @see #setNominalPressure(Pressure)
	 * @see org.ferrule.model.ModelPackage#getBalloon_NominalPressure()
	 * @model dataType="org.ferrule.model.Pressure"
	 * @generated
	 */
	Pressure getNominalPressure();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Balloon#getNominalPressure <em>Nominal Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Nominal Pressure</em>' attribute.
	 * @see #getNominalPressure()
	 * @generated
	 */
	void setNominalPressure(Pressure value);

	/**
	 * Returns the value of the '<em><b>Rated Burst Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The rated burst pressure (atm, bar, kPa, MPa, psi or mmHg).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rated Burst Pressure</em>' attribute.
	 * @see #setRatedBurstPressure(Pressure)
	 * @see org.ferrule.model.ModelPackage#getBalloon_RatedBurstPressure()
	 * @model dataType="org.ferrule.model.Pressure"
	 * @generated
	 */
	Pressure getRatedBurstPressure();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Balloon#getRatedBurstPressure <em>Rated Burst Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Burst Pressure</em>' attribute.
	 * @see #getRatedBurstPressure()
	 * @generated
	 */
	void setRatedBurstPressure(Pressure value);

	/**
	 * Returns the value of the '<em><b>Compliance</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.ComplianceRow}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The compliance table, in rising pressure.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Compliance</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getBalloon_Compliance()
	 * @model containment="true"
	 * @generated
	 */
	EList<ComplianceRow> getCompliance();

} // Balloon
