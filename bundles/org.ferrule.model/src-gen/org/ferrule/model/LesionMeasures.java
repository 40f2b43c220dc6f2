/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Lesion Measures</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What was seen of a lesion, for published scores. What is not given is not known.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.LesionMeasures#isBluntStump <em>Blunt Stump</em>}</li>
 *   <li>{@link org.ferrule.model.LesionMeasures#isCalcification <em>Calcification</em>}</li>
 *   <li>{@link org.ferrule.model.LesionMeasures#getBendDegrees <em>Bend Degrees</em>}</li>
 *   <li>{@link org.ferrule.model.LesionMeasures#isFailedBefore <em>Failed Before</em>}</li>
 *   <li>{@link org.ferrule.model.LesionMeasures#getOcclusionMonths <em>Occlusion Months</em>}</li>
 *   <li>{@link org.ferrule.model.LesionMeasures#getCalciumDegrees <em>Calcium Degrees</em>}</li>
 *   <li>{@link org.ferrule.model.LesionMeasures#getCalciumThickness <em>Calcium Thickness</em>}</li>
 *   <li>{@link org.ferrule.model.LesionMeasures#getCalciumLength <em>Calcium Length</em>}</li>
 *   <li>{@link org.ferrule.model.LesionMeasures#getTraits <em>Traits</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getLesionMeasures()
 * @model
 * @generated
 */
public interface LesionMeasures extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Blunt Stump</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether an occlusion begins with a blunt stump.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Blunt Stump</em>' attribute.
	 * @see #isSetBluntStump()
	 * @see #unsetBluntStump()
	 * @see #setBluntStump(boolean)
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_BluntStump()
	 * @model unsettable="true"
	 * @generated
	 */
	boolean isBluntStump();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LesionMeasures#isBluntStump <em>Blunt Stump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blunt Stump</em>' attribute.
	 * @see #isSetBluntStump()
	 * @see #unsetBluntStump()
	 * @see #isBluntStump()
	 * @generated
	 */
	void setBluntStump(boolean value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.LesionMeasures#isBluntStump <em>Blunt Stump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetBluntStump()
	 * @see #isBluntStump()
	 * @see #setBluntStump(boolean)
	 * @generated
	 */
	void unsetBluntStump();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.LesionMeasures#isBluntStump <em>Blunt Stump</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Blunt Stump</em>' attribute is set.
	 * @see #unsetBluntStump()
	 * @see #isBluntStump()
	 * @see #setBluntStump(boolean)
	 * @generated
	 */
	boolean isSetBluntStump();

	/**
	 * Returns the value of the '<em><b>Calcification</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether calcium is seen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calcification</em>' attribute.
	 * @see #isSetCalcification()
	 * @see #unsetCalcification()
	 * @see #setCalcification(boolean)
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_Calcification()
	 * @model unsettable="true"
	 * @generated
	 */
	boolean isCalcification();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LesionMeasures#isCalcification <em>Calcification</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calcification</em>' attribute.
	 * @see #isSetCalcification()
	 * @see #unsetCalcification()
	 * @see #isCalcification()
	 * @generated
	 */
	void setCalcification(boolean value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.LesionMeasures#isCalcification <em>Calcification</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetCalcification()
	 * @see #isCalcification()
	 * @see #setCalcification(boolean)
	 * @generated
	 */
	void unsetCalcification();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.LesionMeasures#isCalcification <em>Calcification</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Calcification</em>' attribute is set.
	 * @see #unsetCalcification()
	 * @see #isCalcification()
	 * @see #setCalcification(boolean)
	 * @generated
	 */
	boolean isSetCalcification();

	/**
	 * Returns the value of the '<em><b>Bend Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The largest bend of the occlusion or lesion, in degrees.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bend Degrees</em>' attribute.
	 * @see #setBendDegrees(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_BendDegrees()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0' most='180' label='Bend (degrees)'"
	 * @generated
	 */
	BigDecimal getBendDegrees();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LesionMeasures#getBendDegrees <em>Bend Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bend Degrees</em>' attribute.
	 * @see #getBendDegrees()
	 * @generated
	 */
	void setBendDegrees(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Failed Before</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether an earlier attempt failed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Failed Before</em>' attribute.
	 * @see #isSetFailedBefore()
	 * @see #unsetFailedBefore()
	 * @see #setFailedBefore(boolean)
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_FailedBefore()
	 * @model unsettable="true"
	 * @generated
	 */
	boolean isFailedBefore();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LesionMeasures#isFailedBefore <em>Failed Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Failed Before</em>' attribute.
	 * @see #isSetFailedBefore()
	 * @see #unsetFailedBefore()
	 * @see #isFailedBefore()
	 * @generated
	 */
	void setFailedBefore(boolean value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.LesionMeasures#isFailedBefore <em>Failed Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetFailedBefore()
	 * @see #isFailedBefore()
	 * @see #setFailedBefore(boolean)
	 * @generated
	 */
	void unsetFailedBefore();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.LesionMeasures#isFailedBefore <em>Failed Before</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Failed Before</em>' attribute is set.
	 * @see #unsetFailedBefore()
	 * @see #isFailedBefore()
	 * @see #setFailedBefore(boolean)
	 * @generated
	 */
	boolean isSetFailedBefore();

	/**
	 * Returns the value of the '<em><b>Occlusion Months</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For how many months it has been occluded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Occlusion Months</em>' attribute.
	 * @see #setOcclusionMonths(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_OcclusionMonths()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0' label='Occluded for (months)'"
	 * @generated
	 */
	BigDecimal getOcclusionMonths();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LesionMeasures#getOcclusionMonths <em>Occlusion Months</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Occlusion Months</em>' attribute.
	 * @see #getOcclusionMonths()
	 * @generated
	 */
	void setOcclusionMonths(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Calcium Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The largest angle that calcium takes up of the circumference, in degrees.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calcium Degrees</em>' attribute.
	 * @see #setCalciumDegrees(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_CalciumDegrees()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0' most='360' label='Angle of calcium (degrees)'"
	 * @generated
	 */
	BigDecimal getCalciumDegrees();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LesionMeasures#getCalciumDegrees <em>Calcium Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calcium Degrees</em>' attribute.
	 * @see #getCalciumDegrees()
	 * @generated
	 */
	void setCalciumDegrees(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Calcium Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The largest thickness of the calcium (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calcium Thickness</em>' attribute.
	 * @see #setCalciumThickness(Dimension)
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_CalciumThickness()
	 * @model dataType="org.ferrule.model.Dimension"
	 * @generated
	 */
	Dimension getCalciumThickness();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LesionMeasures#getCalciumThickness <em>Calcium Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calcium Thickness</em>' attribute.
	 * @see #getCalciumThickness()
	 * @generated
	 */
	void setCalciumThickness(Dimension value);

	/**
	 * Returns the value of the '<em><b>Calcium Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The length of the calcium (mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calcium Length</em>' attribute.
	 * @see #setCalciumLength(Dimension)
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_CalciumLength()
	 * @model dataType="org.ferrule.model.Dimension"
	 * @generated
	 */
	Dimension getCalciumLength();

	/**
	 * Sets the value of the '{@link org.ferrule.model.LesionMeasures#getCalciumLength <em>Calcium Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calcium Length</em>' attribute.
	 * @see #getCalciumLength()
	 * @generated
	 */
	void setCalciumLength(Dimension value);

	/**
	 * Returns the value of the '<em><b>Traits</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.LesionTrait}.
	 * The literals are from the enumeration {@link org.ferrule.model.LesionTrait}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What else was seen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Traits</em>' attribute list.
	 * @see org.ferrule.model.LesionTrait
	 * @see org.ferrule.model.ModelPackage#getLesionMeasures_Traits()
	 * @model unique="false"
	 * @generated
	 */
	EList<LesionTrait> getTraits();

} // LesionMeasures
