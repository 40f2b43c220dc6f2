/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stent</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stent on its delivery system.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Stent#getSection <em>Section</em>}</li>
 *   <li>{@link org.ferrule.model.Stent#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.Stent#getLength <em>Length</em>}</li>
 *   <li>{@link org.ferrule.model.Stent#getMaximumDiameter <em>Maximum Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.Stent#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.ferrule.model.Stent#getStrutThickness <em>Strut Thickness</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getStent()
 * @model
 * @generated
 */
public interface Stent extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the shaft section where the stent is crimped; its od is the crossing profile.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Section</em>' attribute.
	 * @see #setSection(String)
	 * @see org.ferrule.model.ModelPackage#getStent_Section()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='ShaftSection' label='Crimped on section'"
	 * @generated
	 */
	String getSection();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Stent#getSection <em>Section</em>}' attribute.
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
	 * The nominal diameter, expanded (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getStent_Diameter()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STENT_DIAMETER'"
	 * @generated
	 */
	Dimension getDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Stent#getDiameter <em>Diameter</em>}' attribute.
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
	 * The nominal length, expanded (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Dimension)
	 * @see org.ferrule.model.ModelPackage#getStent_Length()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH'"
	 * @generated
	 */
	Dimension getLength();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Stent#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Dimension value);

	/**
	 * Returns the value of the '<em><b>Maximum Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The largest diameter that the maker allows after dilatation (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Maximum Diameter</em>' attribute.
	 * @see #setMaximumDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getStent_MaximumDiameter()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STENT_DIAMETER' label='Largest diameter after dilatation'"
	 * @generated
	 */
	Dimension getMaximumDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Stent#getMaximumDiameter <em>Maximum Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Diameter</em>' attribute.
	 * @see #getMaximumDiameter()
	 * @generated
	 */
	void setMaximumDiameter(Dimension value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The material of the struts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(String)
	 * @see org.ferrule.model.ModelPackage#getStent_Material()
	 * @model
	 * @generated
	 */
	String getMaterial();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Stent#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(String value);

	/**
	 * Returns the value of the '<em><b>Strut Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The thickness of the struts (um or mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Strut Thickness</em>' attribute.
	 * @see #setStrutThickness(Dimension)
	 * @see org.ferrule.model.ModelPackage#getStent_StrutThickness()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='CLEARANCE'"
	 * @generated
	 */
	Dimension getStrutThickness();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Stent#getStrutThickness <em>Strut Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strut Thickness</em>' attribute.
	 * @see #getStrutThickness()
	 * @generated
	 */
	void setStrutThickness(Dimension value);

} // Stent
